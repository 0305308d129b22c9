"""Words of mail that asks for no slab, by what it is, each with how much it counts against."""

from __future__ import annotations

import re
from typing import Final

AGAINST: Final = (
    (
        "invoice",
        5,
        re.compile(
            r"\b(?:invoice|rechnung|statement|remittance|credit note|receipt)\b[^.\n]{0,40}\b(?:"
            r"\d{3,}|attached|below|for your|overdue|due)|payment (?:is )?(?:due|overdue)"
            r"|total with vat|amount due|zahlbar|fällig"
            r"|statement of account|(?:your|our) statement\b|balance (?:due|outstanding|owing)",
            re.IGNORECASE,
        ),
    ),
    (
        "news",
        5,
        re.compile(
            r"\bin this issue\b|\breader projects?\b|\bissue (?:no\.? ?|#)\d+|unsubscribe|newsle"
            r"tter(?![^\n]{0,12}:\s*(?:no|yes|nein|ja|false|true)\b)|abbestellen|view (?:this"
            r"|it) in (?:your )?browser|you (?:get|are receiving|received) this|\babmelden\b|pro"
            r"spekt\b|gültig bis|% off\b|trade stands?|early bird"
            r"|special offer|our (?:new )?range\b(?! (?:cooker|oven|is))|our latest|black friday",
            re.IGNORECASE,
        ),
    ),
    (
        "complaint",
        4,
        re.compile(
            r"\bnot happy\b|come and (?:look at it|pack|grind|fix|sort|repair|put it right)|\bro"
            r"cks\b|i(?:'ve|’ve| have) been ringing|\bnot good enough\b|put (?:it|this) right"
            r"|\bunhappy\b|\bdisappointed\b|(?:i|we) (?:want|wish|have|need) to complain|\bcompl"
            r"aint (?:about|regarding)|\brefund\b|(?:has|have|is|got) (?:a )?(?:(?:chip|crack"
            r"|stain|scratch)(?:p?ed)?|damaged|broken)\b|\ba (?:chip|crack|stain|scratch)\b|whit"
            r"e bloom|beschädigt|reklamation|mangel"
            r"|gerissen|\b(?:has|have|got) a \w+ (?:chip|crack|scratch)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "delivered",
        3,
        re.compile(
            r"(?:table|top|worktop|hearth|slab|bench|shelf|order) (?:came|is in|was delivered"
            r"|(?:has |is )?arrived)|bezahlt habe ich|\bauftrag \d|krankmeldung|terminabsage|whe"
            r"re is my order|\byou did (?:our|my)\b|you (?:delivered|made|fitted|installed|cast"
            r"|brought|sent) (?:us |me |for us |it )?(?:on|last|in|the|us|me|a)\b|\b(?:i|we) pai"
            r"d (?:you|for (?:it|this|them|these)|(?:£|€|\$)[\d.,]+ for (?:it|this|them))\b|that"
            r" you (?:made|fitted|delivered)|sie (?:geliefert|eingebaut)|geliefert haben|\byour "
            r"(?:chaps|lads|boys|team|men|fitters|guys|driver)"
            r" (?:fitted|delivered|installed|brought|put|dropped)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "thanks",
        5,
        re.compile(
            r"just (?:to say|a note to)|(?:just|only) (?:want|wanted|wish) to (?:say|thank)|exac"
            r"tly what we (?:hoped|wanted)|thank you from|thanks again for (?:the|our|your)|very"
            r" happy (?:kitchen|customer)|decided against|i'll tell everyone|told (?:my|our) (?:"
            r"neighbour|neighbor|friend)s?|no reply needed|thank you for the (?:lovely|beautiful"
            r"|great)|(?:it|they)(?:'s|’s| is| are) (?:beautiful|lovely|gorgeous|perfect|fantast"
            r"ic|wonderful)|so pleased with|delighted with|vielen dank für die schöne|(?:looks?"
            r"|is|are) (?:absolutely |really |just |so )?(?:fantastic|amazing|great|stunning|sup"
            r"erb|brilliant)\b(?! (?:for|if|but)\b)|thank (?:you|tom|pat|them) (?:both |all )?(?"
            r":so much|for (?:carrying|fitting|bringing|all))|(?:sieht|sehen) (?:\w+ ){0,2}(?:gr"
            r"oßartig|toll|super|wunderbar|klasse|fantastisch|schön)(?: \w+)? aus|(?:ist|sind) ("
            r"?:\w+ ){0,3}angekommen|vielen dank auch|danke noch ?mal|keep up the good|love(?:ly"
            r")? job|very happy with|thrilled with|\b(?:went|gone|slid|dropped|fitted|sits) (?:s"
            r"traight )?(?:in |into place )?(?:a treat|perfectly|beautifully|like a dream|like a"
            r" glove)|\bturned out (?:\w+ )?(?:well|lovely|beautifully|perfect(?:ly)?)|\b(?:arri"
            r"ved|came|got here) (?:safe(?:ly| and sound)|in one piece)|\bover the moon with|\bc"
            r"huffed\b|could(?:n['’]t| not) be happier|\bworth (?:every penny|the wait)|(?:sitzt"
            r"|passt) (?:perfekt|wunderbar"
            r"|wie angegossen)|(?:sind|bin) (?:\w+ )?begeistert\b|heil angekommen",
            re.IGNORECASE,
        ),
    ),
    (
        "praise",
        2,
        re.compile(
            r"\b(?:four|five|[45])[ -]stars?\b|\bwhat a (?:joy|delight|beauty)\b|\b(?:darauf|dam"
            r"it|miteinander) angestoßen\b|\b(?:nicest|finest|best) (?:\w+ ){1,4}"
            r"(?:i|he|she|they|we)(?:['’]d|['’]ve|['’]s| had| has| have)(?: ever)? seen\b",
            re.IGNORECASE,
        ),
    ),
    (
        "accepted",
        6,
        re.compile(
            r"(?<!if we )(?<!if i )(?<!once we )(?:please )?go ahead\b(?! and (?:price|quote|cos"
            r"t|work))|happy to (?:go ahead|proceed)|please proceed|we(?:'d|’d| would) like to ("
            r"?:go ahead|proceed)|send (?:me |us )?(?:the|your|a|an) (?:deposit )?invoice|deposi"
            r"t (?:is )?(?:paid|sent)|(?:i|we) accept|accept (?:the|your) (?:estimate|quote"
            r"|quotation)|bestätigen (?:wir|ich)|hiermit (?:bestelle|beauftrage)",
            re.IGNORECASE,
        ),
    ),
    (
        "ordered",
        4,
        re.compile(
            r"\bstill (?:on|all right|alright|ok|okay|good|fine) (?:for|to)\b|for bringing (?:th"
            r"e|our|my)\b|\b(?:my|our) deposit\b|deposit (?:for|on) (?:the|my|our)\b|\b(?:my|our"
            r") (?:\w+ ){0,2}order\b[^.?\n]{0,80}\b(?:due|late|ready|overdue|placed|coming|delay"
            r"ed)|haven['’]t parsed (?:a thing|anything|back)|when (?:it |they |she )?(?:will"
            r"|'ll|’ll) (?:it |they )?be (?:ready|finished|delivered)\b[^.\n]{0,40}(?:order|ref)"
            r"|\b(?:just )?confirm(?:ing)? (?:that )?(?:you['’]?(?:re| are)|your visit|the visit"
            r"|our appointment|the appointment)|you['’]?(?:re| are) (?:still )?(?:coming|fitting"
            r"|delivering|templating) (?:on|at|this|next|today|tomorrow)|see you (?:on|at|tomorr"
            r"ow|next)|wann (?:kommt|wird) (?:die|meine|unsere) (?:bestell|platte)"
            r"|meine bestellung|termin (?:am|bestätigen)",
            re.IGNORECASE,
        ),
    ),
    (
        "past",
        3,
        re.compile(
            r"(?:thanks|thank you|cheers) for (?:fitting|delivering|bringing|making|coming (?:ou"
            r"t|over|round)|installing|the (?:visit|worktop|top|table|hearth))|\bit was the \d"
            r"|mislaid|care sheet|\byou (?:showed|fitted|made|installed|brought) (?:at|on|for|us"
            r"|me|last)",
            re.IGNORECASE,
        ),
    ),
    (
        "press",
        5,
        re.compile(
            r"\b(?:article|feature|piece|story) (?:on|about)\b|\bour (?:\w+ )?(?:issue|readers"
            r"|magazine|podcast|show)\b|\binterview\b|\b\d{1,3}[ -]minute call|journalist"
            r"|photo ?shoot",
            re.IGNORECASE,
        ),
    ),
    (
        "answered",
        5,
        re.compile(
            r"\b(?:got|received|had|have) (?:your|the) (?:quot\w*|estimate|price|email)\b[^.\n]"
            r"{0,80}(?:thanks|thank you|cheers)|(?:will|['’]ll) (?:let you know|get back to you"
            r"|be in touch|think (?:about|it) over|come back to you)|\bhave a think\b|\bsleep on"
            r" it\b|need to (?:talk|speak|think)\b|(?<!by )(?<!by a )\bcourier\b|unwrapped|corne"
            r"r of the crate|the slab inside"
            r"|turned up (?:today|this|yesterday)",
            re.IGNORECASE,
        ),
    ),
    (
        "declined",
        5,
        re.compile(
            r"(?:bit|little|way|far|well) (?:beyond|over|above|outside|out of|more than)(?! (?:o"
            r"n|there|by|to)\b)|more than (?:we|i)(?:['’]d)? (?:bargained|budgeted|can|could|wan"
            r"t|had|were|was|hoped|planned|expected|thought)|\btoo (?:dear|expensive|pricey|much"
            r" for us)\b|(?:we|i)(?:'ll|’ll| will) leave it\b|\bzu teuer\b|(?:found|got) (?:some"
            r"one|somebody|it|one) (?:else|elsewhere|cheaper)|(?:decided|opted|chosen|going|gone"
            r") (?:to go )?(?:with|for) (?:timber|wood|oak|quartz|granite|marble|laminate|anothe"
            r"r|someone|somebody|a different|the other)|not (?:be )?(?:going ahead|proceeding)"
            r"|won['’]t be (?:going ahead|needing|taking|proceeding)|\bno longer (?:need|want"
            r"|require) (?:it|your|the (?:quot|work|slab|top|hearth|table))|(?:have|had|need) to"
            r" cancel|please cancel (?!the (?:upstand|splash|sink|hob|tap|hole|shelf))|(?:went"
            r"|go) elsewhere|(?:quot\w*|estimate|offer|price)\b[^.\n]{0,60}\.?\s[^.]{0,60}(?:i['"
            r"’]m|we['’]re|am|are) afraid|haben uns (?:für|gegen|anders)|anderweitig vergeben"
            r"|stornier\w*|leider (?:doch )?nicht|(?:decided|going|chosen) to (?:stay|stick)|sti"
            r"cking with"
            r"|staying with|sorry for (?:your|the|any) (?:trouble|bother)|thanks anyway",
            re.IGNORECASE,
        ),
    ),
    (
        "trade",
        6,
        re.compile(
            r"\bplaster(?:ing|er)?\b|\bskim(?:ming|med)?\b|\bdrive(?:way)?s?\b|\bscreed\w*|\bfou"
            r"ndations?\b|\bfootings?\b|\bready[ -]?mix\w*|\b(?:shed|garage|barn|stable|workshop"
            r"|cellar|concrete) (?:base|floor)s?\b|\bpaving\b|\bgroundwork\w*|\bfence posts?\b"
            r"|\bbags of\b|\btarmac\b|\broof(?:ing|ers?)\b|\bretaining wall|\bcubic (?:met|yard)"
            r"|\bm³|\b\d m3\b|\btonnes? of\b|\bto (?:lay|pour) (?:a|the) (?:\w+ ){0,2}(?:floor"
            r"|path|patio|base|drive)|\bestrich\b|\bfundament\b|\beinfahrt\b|\bbodenplatte für ("
            r"?:die|eine|unsere) (?:garage|halle)"
            r"|\bfertigbeton\b|\bsäcke\b",
            re.IGNORECASE,
        ),
    ),
    (
        "bought",
        4,
        re.compile(
            r"\b(?:bought|purchased|got|had) (?:\w+ ){1,6}from you\b|\byou (?:made|cast|supplied"
            r"|sold) (?:us|me)\b[^.?\n]{0,80}\b(?:ago|last year|20\d\d)|\b(?:bei"
            r"|von) ihnen (?:gekauft|bestellt|bezogen|erworben)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "care",
        4,
        re.compile(
            r"how (?:do|can|should|would) (?:i|we|you) (?:best )?(?:clean|remove|re-?seal|look a"
            r"fter|get (?:rid|it off|it out))|can (?:i|we) (?:use|clean|put) \w+|(?:ring|stain"
            r"|mark|limescale|scratch\w*)\b[^.?\n]{0,60}(?:\.|,)?[^.?\n]{0,40}get (?:it|them|tha"
            r"t) (?:off|out)|what (?:should|do) (?:i|we) (?:clean|use)|\b(?:i|we) (?:got|had|bou"
            r"ght|ordered) (?:it |this |them )?from you\b|re-?seal (?:it|ours|the one)"
            r"|wie (?:reinige|pflege|bekomme)|\bfleck(?:en)?\b",
            re.IGNORECASE,
        ),
    ),
    (
        "offered",
        5,
        re.compile(
            r"going spare|for sale\b|want (?:some|any|them|one)\?|are you (?:about|around"
            r"|free) on|interested in buying|a (?:tenner|fiver) each|fachmesse|jetzt (?:ticket"
            r"|sichern|bestellen|anmelden)|aussteller\b|trade fair|exhibitors?\b"
            r"|book your (?:stand|ticket)",
            re.IGNORECASE,
        ),
    ),
    (
        "absence",
        5,
        re.compile(
            r"out of (?:the )?office|\bim urlaub\b|automatic reply|auto-?reply|abwesenheits"
            r"|on (?:annual )?leave until|delivery status notification|undeliverable",
            re.IGNORECASE,
        ),
    ),
    (
        "pitch",
        5,
        re.compile(
            r"\b(?:find|attached|below)[^.\n]{0,24}our quot(?:e|ation)\b|\bour quotation for\b"
            r"|\bservicing your\b|\b(?:you|you['’]d|you would) be interested in\b|(?<!your )(?<!"
            r"(?:have|send) a )(?<!(?:got|see) a )(?<!there a )\bprice list\b|our prices"
            r"|orders over|minimum order|\bmoq\b|\bwe are (?:an? )?(?:\w+ )?(?:factory|manufactu"
            r"r\w*|exporter)|\bour catalogue\b|price from (?:usd|eur|\$|€|£)|dear (?:purchasing"
            r"|sales) (?:manager|dep)|wir bieten ihnen|bieten wir ihnen|sonderaktion|\bab \d+ st"
            r"ück\b|sehr geehrte kund(?:en|innen)\b|solange der vorrat|\bgratis dazu\b|\b(?:send"
            r"|offer|give) (?:you|your (?:\w+ )?(?:team|shop|company|workshop))(?: a)? free\b"
            r"|\b(?:shops|workshops|fabricators|casters) tell us\b|\bmakes? [^.\n]{3,40} for (?:"
            r"\w+ ){0,2}(?:shops|workshops|fabricators|casters)\b|\bnur im (?:januar|februar"
            r"|märz|april|mai|ju[nl]i|august|\w{4,5}(?:em|o)ber)\b|sonderpreis|sonderangebot"
            r"|aktionspreis|(?:preis|eur|€|ab \d)[^.\n]{0,30}frei haus|we (?:can )?offer you"
            r"|special price|per sheet|per tonne|minimum quantity|\bseo\b|your website (?:is"
            r"|has|could|does|ranks|needs)|your competitors|your google|clicks a month|money bac"
            r"k|free (?:audit|trial|demo)|per month\b|/month|search ranking|website traffic"
            r"|first page of|page one\b|\branking\b|\bleads\b|lead generation|web design"
            r"|guest post|our services|we (?:supply|offer|manufacture|stock|distribute)\b"
            r"|price list attached|we are a (?:leading|supplier|manufacturer)"
            r"|wholesale",
            re.IGNORECASE,
        ),
    ),
    (
        "application",
        5,
        re.compile(
            r"\b(?:apply(?:ing)?|application) for (?:the|a|your|any)\b|\b(?:job|position|role"
            r"|post) (?:as an?|that you|you) |\b(?:job|position|role|post)\b[^.\n]{0,40}\badvert"
            r"|looking for (?:work|a job|employment)|years['’]? experience|\b(?:work|school"
            r"|college|student) placement|\bdissertation\b|\bthesis\b|(?:i am|i'm|i’m) an? (?:\w"
            r"+ ){0,4}(?:student|apprentice|trainee)\b|\bstelle als\b|\bausbildungs?\w*|\bprakti"
            r"kum\w*|\b\w*lehr(?:e|stelle|ling)\b|\bmy references\b|\b(?:driving|fork ?lift) (?:"
            r"ticket|licen[cs]e)\b|\btake me on\b|\bvacanc|apprentice|work experience|job applic"
            r"ation|\b(?:week|day)['’]s trial\b|\b(?:my|attached) cv\b|\bcv (?:is )?attached\b"
            r"|\bcan start (?:any ?time|on|from|immediately|straight|now|work)\b|(?:looking for"
            r"|need|want|taking on) (?:somebody|someone|people|staff|hands) (?:in|to work"
            r"|for) (?:the|your)|\bdone \w+ years? (?:on|of|in|at)\b"
            r"|\bany work going\b|\bbewerbe\b|\blebenslauf\b|bewerbung|resume attached|internship",
            re.IGNORECASE,
        ),
    ),
    (
        "notice",
        4,
        re.compile(
            r"\bhas (?:now )?(?:been )?(?:shipped|despatched|dispatched)\b|\btrack (?:it"
            r"|your)\b|(?:you(?:'re|’re| are)|are you) open (?:on|at|this|over|all)|opening (?:h"
            r"ours|times)|wurde (?:heute |soeben )?versandt|sendungsnummer|öffnungszeiten"
            r"|tracking number|your parcel|has been dispatched|out for delivery|delivery note"
            r"|your (?:appointment|booking|subscription)|password|verify your account|meter read"
            r"ing|\b(?:collection|delivery|consignment|shipment|pallets?)(?: is| has been| was"
            r"| are)? (?:now )?(?:booked|confirmed)\b|\b(?:abholung|lieferung|sendung) (?:ist"
            r"|wurde) (?:gebucht|bestätigt)|\bantworten sie (?:bitte )?nicht auf\b"
            r"|your (?:insurance|policy|renewal)|\bminutes (?:of|item)\b|\bcouncil minutes\b",
            re.IGNORECASE,
        ),
    ),
)

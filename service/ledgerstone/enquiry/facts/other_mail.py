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
            r"\bin this issue\b|\breader projects?\b|\bissue (?:no\.? ?|#)\d+|unsubscribe"
            r"|newsletter(?![^\n]{0,12}:\s*(?:no|yes|nein|ja|false|true)\b)|abbestellen|view (?:"
            r"this|it) in (?:your )?browser|you (?:get|are receiving|received) this|\babmelden\b"
            r"|prospekt\b|gültig bis|% off\b|trade stands?|early bird"
            r"|special offer|our (?:new )?range\b(?! (?:cooker|oven|is))|our latest|black friday",
            re.IGNORECASE,
        ),
    ),
    (
        "complaint",
        4,
        re.compile(
            r"\bnot happy\b|come and (?:look at it|pack|grind|fix|sort|repair|put it right)"
            r"|\brocks\b|i(?:'ve|’ve| have) been ringing|\bnot good enough\b|put (?:it|this) rig"
            r"ht|\bunhappy\b|\bdisappointed\b|(?:i|we) (?:want|wish|have|need) to complain"
            r"|\bcomplaint (?:about|regarding)|\brefund\b|(?:has|have|is|got) (?:a )?(?:(?:chip"
            r"|crack|stain|scratch)(?:p?ed)?|damaged|broken)\b|\ba (?:chip|crack|stain|scratch)"
            r"\b|white bloom|beschädigt|reklamation|mangel"
            r"|gerissen|\b(?:has|have|got) a \w+ (?:chip|crack|scratch)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "delivered",
        3,
        re.compile(
            r"(?:table|top|worktop|hearth|slab|bench|shelf|order) (?:came|is in|was delivered"
            r"|(?:has |is )?arrived)|bezahlt habe ich|\bauftrag \d|krankmeldung|terminabsage"
            r"|where is my order|\byou did (?:our|my)\b|you (?:delivered|made|fitted|installed"
            r"|cast|brought|sent) (?:us |me |for us |it )?(?:on|last|in|the|us|me|a)\b|\b(?:i"
            r"|we) paid (?:you|for (?:it|this|them|these)|(?:£|€|\$)[\d.,]+ for (?:it|this"
            r"|them))\b|that you (?:made|fitted|delivered)|sie (?:geliefert|eingebaut)|geliefert"
            r" haben|\byour (?:chaps|lads|boys|team|men|fitters|guys|driver)"
            r" (?:fitted|delivered|installed|brought|put|dropped)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "thanks",
        5,
        re.compile(
            r"just (?:to say|a note to)|(?:just|only) (?:want|wanted|wish) to (?:say|thank)"
            r"|exactly what we (?:hoped|wanted)|thank you from|thanks again for (?:the|our"
            r"|your)|very happy (?:kitchen|customer)|decided against|i'll tell everyone|told (?:"
            r"my|our) (?:neighbour|neighbor|friend)s?|no reply needed|thank you for the (?:lovel"
            r"y|beautiful|great)|(?:it|they)(?:'s|’s| is| are) (?:beautiful|lovely|gorgeous"
            r"|perfect|fantastic|wonderful)|so pleased with|delighted with|vielen dank für die s"
            r"chöne|(?:looks?|is|are) (?:absolutely |really |just |so )?(?:fantastic|amazing"
            r"|great|stunning|superb|brilliant)\b(?! (?:for|if|but)\b)|thank (?:you|tom|pat"
            r"|them) (?:both |all )?(?:so much|for (?:carrying|fitting|bringing|all))|(?:sieht"
            r"|sehen) (?:\w+ ){0,2}(?:großartig|toll|super|wunderbar|klasse|fantastisch|schön)(?"
            r": \w+)? aus|(?:ist|sind) (?:\w+ ){0,3}angekommen|vielen dank auch|danke noch ?mal"
            r"|keep up the good|love(?:ly)? job|very happy with|thrilled with|\b(?:went|gone"
            r"|slid|dropped|fitted|sits) (?:straight )?(?:in |into place )?(?:a treat|perfectly"
            r"|beautifully|like a dream|like a glove)|\bturned out (?:\w+ )?(?:well|lovely"
            r"|beautifully|perfect(?:ly)?)|\b(?:arrived|came|got here) (?:safe(?:ly| and sound)"
            r"|in one piece)|\bover the moon with|\bchuffed\b|could(?:n['’]t| not) be happier"
            r"|\bworth (?:every penny|the wait)|(?:sitzt|passt) (?:perfekt|wunderbar"
            r"|wie angegossen)|(?:sind|bin) (?:\w+ )?begeistert\b|heil angekommen",
            re.IGNORECASE,
        ),
    ),
    (
        "praise",
        2,
        re.compile(
            r"\b(?:four|five|[45])[ -]stars?\b|\bwhat a (?:joy|delight|beauty)\b|\b(?:darauf"
            r"|damit|miteinander) angestoßen\b|\b(?:nicest|finest|best) (?:\w+ ){1,4}"
            r"(?:i|he|she|they|we)(?:['’]d|['’]ve|['’]s| had| has| have)(?: ever)? seen\b",
            re.IGNORECASE,
        ),
    ),
    (
        "accepted",
        6,
        re.compile(
            r"(?<!if we )(?<!if i )(?<!once we )(?:please )?go ahead\b(?! and (?:price|quote"
            r"|cost|work))|happy to (?:go ahead|proceed)|please proceed|we(?:'d|’d| would) like "
            r"to (?:go ahead|proceed)|send (?:me |us )?(?:the|your|a|an) (?:deposit )?invoice"
            r"|deposit (?:is )?(?:paid|sent)|(?:i|we) accept|accept (?:the|your) (?:estimate"
            r"|quote"
            r"|quotation)|bestätigen (?:wir|ich)|hiermit (?:bestelle|beauftrage)",
            re.IGNORECASE,
        ),
    ),
    (
        "ordered",
        4,
        re.compile(
            r"\bstill (?:on|all right|alright|ok|okay|good|fine) (?:for|to)\b|for bringing (?:th"
            r"e|our|my)\b|\b(?:my|our) deposit\b|deposit (?:for|on) (?:the|my|our)\b|\b(?:my"
            r"|our) (?:\w+ ){0,2}order\b[^.?\n]{0,80}\b(?:due|late|ready|overdue|placed|coming"
            r"|delayed)|haven['’]t parsed (?:a thing|anything|back)|when (?:it |they |she )?(?:w"
            r"ill|'ll|’ll) (?:it |they )?be (?:ready|finished|delivered)\b[^.\n]{0,40}(?:order"
            r"|ref)|\b(?:just )?confirm(?:ing)? (?:that )?(?:you['’]?(?:re| are)|your visit"
            r"|the visit|our appointment|the appointment)|you['’]?(?:re| are) (?:still )?(?:comi"
            r"ng|fitting|delivering|templating) (?:on|at|this|next|today|tomorrow)|see you (?:on"
            r"|at|tomorrow|next)|wann (?:kommt|wird) (?:die|meine|unsere) (?:bestell|platte)"
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
            r" it\b|need to (?:talk|speak|think)\b|(?<!by )(?<!by a )\bcourier\b|unwrapped"
            r"|corner of the crate|the slab inside"
            r"|turned up (?:today|this|yesterday)",
            re.IGNORECASE,
        ),
    ),
    (
        "declined",
        5,
        re.compile(
            r"(?:bit|little|way|far|well) (?:beyond|over|above|outside|out of|more than)(?! (?:o"
            r"n|there|by|to)\b)|more than (?:we|i)(?:['’]d)? (?:bargained|budgeted|can|could"
            r"|want|had|were|was|hoped|planned|expected|thought)|\btoo (?:dear|expensive|pricey"
            r"|much for us)\b|(?:we|i)(?:'ll|’ll| will) leave it\b|\bzu teuer\b|(?:found"
            r"|got) (?:someone|somebody|it|one) (?:else|elsewhere|cheaper)|(?:decided|opted"
            r"|chosen|going|gone) (?:to go )?(?:with|for) (?:timber|wood|oak|quartz|granite"
            r"|marble|laminate|another|someone|somebody|a different|the other)|not (?:be )?(?:go"
            r"ing ahead|proceeding)|won['’]t be (?:going ahead|needing|taking|proceeding)"
            r"|\bno longer (?:need|want|require) (?:it|your|the (?:quot|work|slab|top|hearth"
            r"|table))|(?:have|had|need) to cancel|please cancel (?!the (?:upstand|splash|sink"
            r"|hob|tap|hole|shelf))|(?:went|go) elsewhere|(?:quot\w*|estimate|offer|price)\b[^."
            r"\n]{0,60}\.?\s[^.]{0,60}(?:i['’]m|we['’]re|am|are) afraid|haben uns (?:für|gegen"
            r"|anders)|anderweitig vergeben|stornier\w*|leider (?:doch )?nicht|(?:decided|going"
            r"|chosen) to (?:stay|stick)|sticking with"
            r"|staying with|sorry for (?:your|the|any) (?:trouble|bother)|thanks anyway",
            re.IGNORECASE,
        ),
    ),
    (
        "trade",
        6,
        re.compile(
            r"\bplaster(?:ing|er)?\b|\bskim(?:ming|med)?\b|\bdrive(?:way)?s?\b|\bscreed\w*"
            r"|\bfoundations?\b|\bfootings?\b|\bready[ -]?mix\w*|\b(?:shed|garage|barn|stable"
            r"|workshop|cellar|concrete) (?:base|floor)s?\b|\bpaving\b|\bgroundwork\w*|\bfence p"
            r"osts?\b|\bbags of\b|\btarmac\b|\broof(?:ing|ers?)\b|\bretaining wall|\bcubic (?:me"
            r"t|yard)|\bm³|\b\d m3\b|\btonnes? of\b|\bto (?:lay|pour) (?:a|the) (?:\w+ ){0,2}(?:"
            r"floor|path|patio|base|drive)|\bestrich\b|\bfundament\b|\beinfahrt\b|\bbodenplatte "
            r"für (?:die|eine|unsere) (?:garage|halle)"
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
            r"how (?:do|can|should|would) (?:i|we|you) (?:best )?(?:clean|remove|re-?seal"
            r"|look after|get (?:rid|it off|it out))|can (?:i|we) (?:use|clean|put) \w+|(?:ring"
            r"|stain|mark|limescale|scratch\w*)\b[^.?\n]{0,60}(?:\.|,)?[^.?\n]{0,40}get (?:it"
            r"|them|that) (?:off|out)|what (?:should|do) (?:i|we) (?:clean|use)|\b(?:i|we) (?:go"
            r"t|had|bought|ordered) (?:it |this |them )?from you\b|re-?seal (?:it|ours|the one)"
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

"""Words of mail that asks for no slab, by what it is, each with how much it counts against."""

from __future__ import annotations

import re
from typing import Final

AGAINST: Final = (
    (
        "invoice",
        5,
        re.compile(
            r"\b(?:invoice|rechnung|statement|remittance|credit note"
            r"|receipt)\b[^.\n]{0,40}\b(?:\d{3,}|attached|below|for your|overdue|due)|payment "
            r"(?:is )?(?:due|overdue)|total with vat|amount due|zahlbar|fällig|statement of "
            r"account|(?:your|our) statement\b|balance (?:due|outstanding|owing)",
            re.IGNORECASE,
        ),
    ),
    (
        "news",
        5,
        re.compile(
            r"\bin this issue\b|\breader projects?\b|\bissue (?:no\.? ?|#)\d+|unsubscribe"
            r"|newsletter(?![^\n]{0,12}:\s*(?:no|yes|nein|ja|false|true)\b)|abbestellen"
            r"|view (?:this|it) in (?:your )?browser|you (?:get|are receiving|received) this"
            r"|\babmelden\b|prospekt\b|gültig bis|% off\b|trade stands?|early bird|special offer"
            r"|our (?:new )?range\b(?! (?:cooker|oven|is))|our latest|black friday",
            re.IGNORECASE,
        ),
    ),
    (
        "complaint",
        4,
        re.compile(
            r"\bnot happy\b|come and (?:look at it|pack|grind|fix|sort|repair|put it right)"
            r"|\brocks\b|i(?:'ve|’ve| have) been ringing|\bnot good enough\b|put (?:it|this) right"
            r"|\bunhappy\b|\bdisappointed\b|(?:i|we) (?:want|wish|have|need) to complain"
            r"|\bcomplaint (?:about|regarding)|\brefund\b|(?:has|have|is|got) (?:a )?(?:(?:chip"
            r"|crack|stain|scratch)(?:p?ed)?|damaged|broken)\b|\ba (?:chip|crack|stain|scratch)\b"
            r"|white bloom|beschädigt|reklamation|mangel|gerissen|\b(?:has|have|got) a \w+ (?:chip"
            r"|crack|scratch)\b",
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
            r"|them))\b|that you (?:made|fitted|delivered)|sie (?:geliefert|eingebaut)"
            r"|geliefert haben|\byour (?:chaps|lads|boys|team|men|fitters|guys|driver) (?:fitted"
            r"|delivered|installed|brought|put|dropped)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "thanks",
        5,
        re.compile(
            r"just (?:to say|a note to)|(?:just|only) (?:want|wanted|wish) to (?:say|thank)"
            r"|exactly what we (?:hoped|wanted)|thank you from|thanks again for (?:the|our|your)"
            r"|very happy (?:kitchen|customer)|decided against|i'll tell everyone|told (?:my"
            r"|our) (?:neighbour|neighbor|friend)s?|no reply needed|thank you for the (?:lovely"
            r"|beautiful|great)|(?:it|they)(?:'s|’s| is| are) (?:beautiful|lovely|gorgeous|perfect"
            r"|fantastic|wonderful)|so pleased with|delighted with|vielen dank für die schöne"
            r"|(?:looks?|is|are) (?:absolutely |really |just |so )?(?:fantastic|amazing|great"
            r"|stunning|superb|brilliant)\b(?! (?:for|if|but)\b)|thank (?:you|tom|pat|them) "
            r"(?:both |all )?(?:so much|for (?:carrying|fitting|bringing|all))|(?:sieht"
            r"|sehen) (?:\w+ ){0,2}(?:großartig|toll|super|wunderbar|klasse|fantastisch"
            r"|schön)(?: \w+)? aus|(?:ist|sind) (?:\w+ ){0,3}angekommen|vielen dank auch"
            r"|danke noch ?mal|keep up the good|love(?:ly)? job|very happy with|thrilled with"
            r"|\b(?:went|gone|slid|dropped|fitted|sits) (?:straight )?(?:in |into place )?(?:a "
            r"treat|perfectly|beautifully|like a dream|like a glove)|\bturned out (?:\w+ )?(?:well"
            r"|lovely|beautifully|perfect(?:ly)?)|\b(?:arrived|came|got here) (?:safe(?:ly"
            r"| and sound)|in one piece)|\bover the moon with|\bchuffed\b|could(?:n['’]t"
            r"| not) be happier|\bworth (?:every penny|the wait)|(?:sitzt|passt) (?:perfekt"
            r"|wunderbar|wie angegossen)|(?:sind|bin) (?:\w+ )?begeistert\b|heil angekommen",
            re.IGNORECASE,
        ),
    ),
    (
        "praise",
        2,
        re.compile(
            r"\b(?:four|five|[45])[ -]stars?\b|\bwhat a (?:joy|delight|beauty)\b|\b(?:darauf|damit"
            r"|miteinander) angestoßen\b|\b(?:nicest|finest|best) (?:\w+ ){1,4}(?:i|he|she|they"
            r"|we)(?:['’]d|['’]ve|['’]s| had| has| have)(?: ever)? seen\b",
            re.IGNORECASE,
        ),
    ),
    (
        "accepted",
        6,
        re.compile(
            r"(?<!if we )(?<!if i )(?<!once we )(?:please )?go ahead\b(?! and (?:price|quote|cost"
            r"|work))|happy to (?:go ahead|proceed)|please proceed|we(?:'d|’d| would) like to "
            r"(?:go ahead|proceed)|send (?:me |us )?(?:the|your|a|an) (?:deposit )?invoice"
            r"|deposit (?:is )?(?:paid|sent)|(?:i|we) accept|accept (?:the|your) (?:estimate|quote"
            r"|quotation)|bestätigen (?:wir|ich)|hiermit (?:bestelle|beauftrage)",
            re.IGNORECASE,
        ),
    ),
    (
        "ordered",
        4,
        re.compile(
            r"\bstill (?:on|all right|alright|ok|okay|good|fine) (?:for|to)\b|for bringing (?:the"
            r"|our|my)\b|\b(?:my|our) deposit\b|deposit (?:for|on) (?:the|my|our)\b|\b(?:my"
            r"|our) (?:\w+ ){0,2}order\b[^.?\n]{0,80}\b(?:due|late|ready|overdue|placed|coming"
            r"|delayed|booked)|\bpaid (?:off )?(?:the|our|my) balance\b|haven['’]t parsed (?:a "
            r"thing|anything|back)|when (?:it |they |she )?(?:will|'ll|’ll) (?:it |they )?be "
            r"(?:ready|finished|delivered)\b[^.\n]{0,40}(?:order|ref)|\b(?:just )?confirm(?:ing)? "
            r"(?:that )?(?:you['’]?(?:re| are)|your visit|the visit|(?:our|the) appointment)"
            r"|you['’]?(?:re| are) (?:still )?(?:coming|fitting|delivering|templating) (?:on|at"
            r"|this|next|today|tomorrow)|see you (?:on|at|tomorrow|next)|wann (?:kommt"
            r"|wird) (?:die|meine|unsere) (?:bestell|platte)|meine bestellung|termin (?:am"
            r"|bestätigen)",
            re.IGNORECASE,
        ),
    ),
    (
        "past",
        3,
        re.compile(
            r"(?:thanks|thank you|cheers) for (?:fitting|delivering|bringing|making|coming (?:out"
            r"|over|round)|installing|the (?:visit|worktop|top|table|hearth))|\bit was the \d"
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
            r"\b(?:got|received|had|have) (?:your|the) (?:quot\w*|estimate|price"
            r"|email)\b[^.\n]{0,80}(?:thanks|thank you|cheers)|(?:will|['’]ll) (?:let you know"
            r"|get back to you|be in touch|think (?:about|it) over|come back to you)|\bhave a "
            r"think\b|\bsleep on it\b|need to (?:talk|speak|think)\b|(?<!by )(?<!by a )\bcourier\b"
            r"|unwrapped|corner of the crate|the slab inside|turned up (?:today|this|yesterday)",
            re.IGNORECASE,
        ),
    ),
    (
        "declined",
        5,
        re.compile(
            r"(?:bit|little|way|far|well) (?:beyond|over|above|outside|out of|more than)(?! (?:on"
            r"|there|by|to)\b)|more than (?:we|i)(?:['’]d)? (?:bargained|budgeted|can|could|want"
            r"|had|were|was|hoped|planned|expected|thought)|\btoo (?:dear|expensive|pricey"
            r"|much for us)\b|(?:we|i)(?:'ll|’ll| will) leave it\b|\bzu teuer\b|(?:found"
            r"|got) (?:someone|somebody|it|one) (?:else|elsewhere|cheaper)|(?:decided|opted|chosen"
            r"|going|gone) (?:to go )?(?:with|for) (?:timber|wood|oak|quartz|granite|marble"
            r"|laminate|another|someone|somebody|a different|the other)|not (?:be )?(?:going ahead"
            r"|proceeding)|won['’]t be (?:going ahead|needing|taking|proceeding)|\bno longer "
            r"(?:need|want|require) (?:it|your|the (?:quot|work|slab|top|hearth|table))|(?:have"
            r"|had|need) to cancel|please cancel (?!the (?:upstand|splash|sink|hob|tap|hole"
            r"|shelf))|(?:went|go) elsewhere|(?:quot\w*|estimate|offer"
            r"|price)\b[^.\n]{0,60}\.?\s[^.]{0,60}(?:i['’]m|we['’]re|am|are) afraid|haben uns "
            r"(?:für|gegen|anders)|anderweitig vergeben|stornier\w*|leider (?:doch )?nicht"
            r"|(?:decided|going|chosen) to (?:stay|stick)|sticking with|staying with|sorry for "
            r"(?:your|the|any) (?:trouble|bother)|thanks anyway",
            re.IGNORECASE,
        ),
    ),
    (
        "trade",
        6,
        re.compile(
            r"\bplaster(?:ing|er)?\b|\bskim(?:ming|med)?\b|\bdrive(?:way)?s?\b|\bscreed\w*"
            r"|\bfoundations?\b|\bfootings?\b|\bready[ -]?mix\w*|\b(?:shed|garage|barn|stable"
            r"|workshop|cellar|concrete) (?:base|floor)s?\b|\bpaving\b|\bgroundwork\w*"
            r"|\bfence posts?\b|\bbags of\b|\btarmac\b|\broof(?:ing|ers?)\b|\bretaining wall"
            r"|\bcubic (?:met|yard)|\bm³|\b\d m3\b|\btonnes? of\b|\bto (?:lay|pour) (?:a"
            r"|the) (?:\w+ ){0,2}(?:floor|path|patio|base|drive)|\bestrich\b|\bfundament\b"
            r"|\beinfahrt\b|\bbodenplatte für (?:die|eine|unsere) (?:garage|halle)|\bfertigbeton\b"
            r"|\bsäcke\b",
            re.IGNORECASE,
        ),
    ),
    (
        "bought",
        4,
        re.compile(
            r"\b(?:bought|purchased|got|had) (?:\w+ ){1,6}from you\b|\byou (?:made|cast|supplied"
            r"|sold) (?:us|me)\b[^.?\n]{0,80}\b(?:ago|last year|20\d\d)|\b(?:bei|von) ihnen "
            r"(?:gekauft|bestellt|bezogen|erworben)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "care",
        4,
        re.compile(
            r"how (?:do|can|should|would) (?:i|we|you) (?:best )?(?:clean|remove|re-?seal"
            r"|look after|get (?:rid|it off|it out))|can (?:i|we) (?:use|clean|put) \w+|(?:ring"
            r"|stain|mark|limescale|scratch\w*)\b[^.?\n]{0,60}(?:\.|,)?[^.?\n]{0,40}get (?:it|them"
            r"|that) (?:off|out)|what (?:should|do) (?:i|we) (?:clean|use)|\b(?:i|we) (?:got|had"
            r"|bought|ordered) (?:it |this |them )?from you\b|re-?seal (?:it|ours|the one)"
            r"|wie (?:reinige|pflege|bekomme)|\bfleck(?:en)?\b",
            re.IGNORECASE,
        ),
    ),
    (
        "offered",
        5,
        re.compile(
            r"going spare|for sale\b|want (?:some|any|them|one)\?|are you (?:about|around|free) on"
            r"|interested in buying|a (?:tenner|fiver) each|fachmesse|jetzt (?:ticket|sichern"
            r"|bestellen|anmelden)|aussteller\b|trade fair|exhibitors?\b|book your (?:stand"
            r"|ticket)",
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
            r"|\bservicing your\b|\b(?:you|you['’]d|you would) be interested in\b|(?<!your "
            r")(?<!(?:have|send) a )(?<!(?:got|see) a )(?<!there a )\bprice list\b|our prices"
            r"|orders over|minimum order|\bmoq\b|\bwe are (?:an? )?(?:\w+ )?(?:factory"
            r"|manufactur\w*|exporter)|\bour catalogue\b|price from (?:usd|eur|\$|€|£)"
            r"|dear (?:purchasing|sales) (?:manager|dep)|wir bieten ihnen|bieten wir ihnen"
            r"|sonderaktion|\bab \d+ stück\b|sehr geehrte kund(?:en|innen)\b|solange der vorrat"
            r"|\bgratis dazu\b|\b(?:send|offer|give) (?:you|your (?:\w+ )?(?:team|shop|company"
            r"|workshop))(?: a)? free\b|\b(?:shops|workshops|fabricators|casters) tell us\b"
            r"|\bmakes? [^.\n]{3,40} for (?:\w+ ){0,2}(?:shops|workshops|fabricators|casters)\b"
            r"|\bnur im (?:januar|februar|märz|april|mai|ju[nl]i|august|\w{4,5}(?:em|o)ber)\b"
            r"|sonderpreis|sonderangebot|aktionspreis|(?:preis|eur|€|ab \d)[^.\n]{0,30}frei haus"
            r"|we (?:can )?offer you|special price|per sheet|per tonne|minimum quantity|\bseo\b"
            r"|your website (?:is|has|could|does|ranks|needs)|your competitors|your google"
            r"|clicks a month|money back|free (?:audit|trial|demo)|per month\b|/month|search "
            r"ranking|website traffic|first page of|page one\b|\branking\b|\bleads\b|lead "
            r"generation|web design|guest post|our services|we (?:supply|offer|manufacture|stock"
            r"|distribute)\b|price list attached|we are a (?:leading|supplier|manufacturer)"
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
            r"|college|student) placement|\bdissertation\b|\bthesis\b|(?:i am|i'm|i’m) an? (?:\w+ "
            r"){0,4}(?:student|apprentice|trainee)\b|\bstelle als\b|\bausbildungs?\w*"
            r"|\bpraktikum\w*|\b\w*lehr(?:e|stelle|ling)\b|\bmy references\b|\b(?:driving"
            r"|fork ?lift) (?:ticket|licen[cs]e)\b|\btake me on\b|\bvacanc|apprentice|work "
            r"experience|job application|\b(?:week|day)['’]s trial\b|\b(?:my|attached) cv\b"
            r"|\bcv (?:is )?attached\b|\bcan start (?:any ?time|on|from|immediately|straight|now"
            r"|work)\b|(?:looking for|need|want|taking on) (?:somebody|someone|people|staff"
            r"|hands) (?:in|to work|for) (?:the|your)|\bdone \w+ years? (?:on|of|in|at)\b"
            r"|\bany work going\b|\bbewerbe\b|\blebenslauf\b|bewerbung|resume attached|internship",
            re.IGNORECASE,
        ),
    ),
    (
        "notice",
        4,
        re.compile(
            r"\bhas (?:now )?(?:been )?(?:shipped|despatched|dispatched)\b|\btrack (?:it|your)\b"
            r"|(?:you(?:'re|’re| are)|are you) open (?:on|at|this|over|all)|opening (?:hours"
            r"|times)|wurde (?:heute |soeben )?versandt|sendungsnummer|öffnungszeiten|tracking "
            r"number|your parcel|has been dispatched|out for delivery|delivery note|your "
            r"(?:appointment|booking|subscription)|password|verify your account|meter reading"
            r"|\b(?:collection|delivery|consignment|shipment|pallets?)(?: is| has been| was"
            r"| are)? (?:now )?(?:booked|confirmed)\b|\b(?:abholung|lieferung|sendung) (?:ist"
            r"|wurde) (?:gebucht|bestätigt)|\bantworten sie (?:bitte )?nicht auf\b|your "
            r"(?:insurance|policy|renewal)|\bminutes (?:of|item)\b|\bcouncil minutes\b",
            re.IGNORECASE,
        ),
    ),
)

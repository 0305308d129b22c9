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
            r"|receipt)\b[^.\n]{0,40}\b(?:\d{3,}|attached|below|for your"
            r"|overdue|due)|payment (?:is )?(?:due|overdue)|total with vat|amount due|zahlbar"
            r"|fällig|statement of account|(?:your|our) statement\b|balance (?:due|outstanding"
            r"|owing)",
            re.IGNORECASE,
        ),
    ),
    (
        "news",
        5,
        re.compile(
            r"unsubscribe|newsletter|abbestellen|view (?:this|it) in (?:your )?browser"
            r"|you (?:get|are receiving|received) this"
            r"|% off\b|trade stands?|early bird|special offer|our (?:range|new range|latest)"
            r"|black friday",
            re.IGNORECASE,
        ),
    ),
    (
        "complaint",
        4,
        re.compile(
            r"\bnot happy\b|come and (?:look at it|pack|grind|fix|sort|repair|put it right)"
            r"|\brocks\b"
            r"|i(?:'ve|’ve| have) been ringing|\bnot good enough\b|put (?:it|this) right"
            r"|\bunhappy\b|\bdisappointed\b|(?:i|we) (?:want|wish|have|need) to complain"
            r"|\bcomplaint (?:about|regarding)|\brefund\b|(?:has|have|is"
            r"|got|a) (?:a )?(?:chip|chipped|crack|cracked"
            r"|stain|stained|scratch|scratched|damaged|broken)\b|white bloom|beschädigt"
            r"|reklamation|mangel|gerissen",
            re.IGNORECASE,
        ),
    ),
    (
        "delivered",
        3,
        re.compile(
            r"(?:table|top|worktop|hearth|slab|bench|shelf|order) (?:came|arrived|is in"
            r"|was delivered)"
            r"|bezahlt habe ich|\bauftrag \d|krankmeldung|terminabsage|where is my order"
            r"|you (?:delivered|made|fitted|installed|cast|brought|sent) (?:us |me |for us "
            r"|it )?(?:on|last|in|the|us|me|a)\b|\b(?:i|we) paid (?:you|for (?:it|this|them"
            r"|these)|(?:£|€|\$)[\d.,]+ for (?:it|this|them))\b"
            r"|that you (?:made|fitted|delivered)|sie (?:geliefert|eingebaut)|geliefert haben",
            re.IGNORECASE,
        ),
    ),
    (
        "thanks",
        5,
        re.compile(
            r"just (?:to say|wanted to say|a note to)|exactly what we (?:hoped|wanted)"
            r"|thank you from"
            r"|thanks again for (?:the|our|your)|very happy (?:kitchen|customer)|decided against"
            r"|i'll tell everyone|told (?:my|our) (?:neighbour|neighbor|friend)s?"
            r"|no reply needed|thank you for the (?:lovely|beautiful|great)|(?:it"
            r"|they)(?:'s|’s| is| are)"
            r" (?:beautiful|lovely|gorgeous|perfect|fantastic|wonderful)|so pleased with"
            r"|delighted with|vielen dank für die schöne"
            r"|(?:looks?|is|are) (?:absolutely |really |just |so )?(?:fantastic|amazing|great"
            r"|stunning|superb|brilliant)\b"
            r"|thank (?:you|tom|pat|them) (?:both |all )?(?:so much|for (?:carrying|fitting"
            r"|bringing|all))"
            r"|(?:sieht|sehen) (?:\w+ ){0,2}(?:großartig|toll|super|wunderbar|klasse|fantastisch"
            r"|schön)"
            r"(?: \w+)? aus|(?:ist|sind) (?:\w+ ){0,3}angekommen|vielen dank auch|danke noch ?mal"
            r"|keep up the good|love(?:ly)? job|very happy with|thrilled with",
            re.IGNORECASE,
        ),
    ),
    (
        "accepted",
        6,
        re.compile(
            r"(?:please )?go ahead\b(?! and (?:price|quote|cost|work))|happy to (?:go ahead"
            r"|proceed)|please proceed|we(?:'d|’d|"
            r" would) like to"
            r" (?:go ahead|proceed)|send (?:me |us )?(?:the|your|a|an) (?:deposit )?invoice"
            r"|deposit (?:is )?(?:paid"
            r"|sent)|i accept|we accept|accept (?:the|your) (?:estimate|quote|quotation)"
            r"|bestätigen (?:wir|ich)"
            r"|hiermit (?:bestelle|beauftrage)",
            re.IGNORECASE,
        ),
    ),
    (
        "ordered",
        4,
        re.compile(
            r"\b(?:my|our) (?:\w+ ){0,2}order\b[^.?\n]{0,80}\b(?:due|late|ready|overdue|placed"
            r"|coming"
            r"|delayed)|haven['’]t heard (?:a thing|anything|back)|when (?:it |they "
            r"|she )?(?:will|'ll|’ll)"
            r" (?:it |they )?be (?:ready|finished|delivered)\b[^.\n]{0,40}(?:order|ref)"
            r"|\b(?:just )?"
            r"confirm(?:ing)? (?:that )?(?:you['’]?(?:re| are)|your visit|the visit"
            r"|our appointment|the"
            r" appointment)|you['’]?(?:re| are) (?:still )?(?:coming|fitting|delivering"
            r"|templating) (?:on"
            r"|at|this|next|today|tomorrow)|see you (?:on|at|tomorrow|next)|wann (?:kommt"
            r"|wird) (?:die"
            r"|meine|unsere) (?:bestell|platte)|meine bestellung|termin (?:am|bestätigen)",
            re.IGNORECASE,
        ),
    ),
    (
        "past",
        3,
        re.compile(
            r"(?:thanks|thank you|cheers) for (?:fitting|delivering|bringing|making"
            r"|coming (?:out|over|round)|installing"
            r"|the (?:visit|worktop|top|table|hearth))|\bit was the \d|mislaid|care sheet"
            r"|\byou (?:showed|fitted|made|installed|brought) (?:at|on|for|us|me|last)",
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
            r"|email)\b[^.\n]{0,80}"
            r"(?:thanks|thank you|cheers)|(?:will|['’]ll) (?:let you know|get back to you"
            r"|be in touch"
            r"|think (?:about|it) over)|need to (?:talk|speak|think)\b|\bcourier\b|unwrapped"
            r"|corner of the crate"
            r"|the slab inside|turned up (?:today|this|yesterday)",
            re.IGNORECASE,
        ),
    ),
    (
        "declined",
        5,
        re.compile(
            r"(?:decided|opted|chosen|going|gone) (?:to go )?(?:with|for) (?:timber|wood|oak|quartz"
            r"|granite|marble|laminate|another|someone|somebody|a different|the other)"
            r"|not (?:be )?(?:going ahead|proceeding)|won['’]t be (?:going ahead|needing|taking"
            r"|proceeding)|\bno longer (?:need|want|require) (?:it|your|the (?:quot|work|slab|top"
            r"|hearth|table))|(?:have|had|need) to cancel|please cancel|(?:went|go) elsewhere"
            r"|(?:quot\w*|estimate|offer|price)\b[^.\n]{0,60}\.?\s[^.]{0,60}(?:i['’]m|we['’]re|am"
            r"|are) afraid|haben uns (?:für|gegen|anders)|anderweitig vergeben|stornier\w*"
            r"|leider (?:doch )?nicht",
            re.IGNORECASE,
        ),
    ),
    (
        "care",
        4,
        re.compile(
            r"how (?:do|can|should|would) (?:i|we|you) (?:best )?(?:clean|remove|re-?seal"
            r"|look after"
            r"|get (?:rid|it off|it out))|can (?:i|we) (?:use|clean|put) \w+"
            r"|(?:ring|stain|mark|limescale|scratch\w*)\b[^.?\n]{0,60}(?:\."
            r"|,)?[^.?\n]{0,40}get (?:it"
            r"|them|that) (?:off|out)|what (?:should|do) (?:i|we) (?:clean|use)|\b(?:i"
            r"|we) (?:got|had"
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
            r"|bestellen|anmelden)"
            r"|aussteller\b|trade fair|exhibitors?\b|book your (?:stand|ticket)",
            re.IGNORECASE,
        ),
    ),
    (
        "absence",
        5,
        re.compile(
            r"\bprice list\b|our prices|orders over|minimum order|out of (?:the )?office"
            r"|automatic reply|auto-?reply|abwesenheits"
            r"|on (?:annual )?leave until|delivery status notification"
            r"|undeliverable",
            re.IGNORECASE,
        ),
    ),
    (
        "pitch",
        5,
        re.compile(
            r"wir bieten ihnen|bieten wir ihnen|sonderpreis|sonderangebot|aktionspreis|frei haus"
            r"|we (?:can )?offer you|special price|per sheet|per tonne|minimum quantity"
            r"|\bseo\b|your website (?:is|has|could|does|ranks|needs)|your competitors"
            r"|your google|clicks a month|money back"
            r"|free (?:audit|trial|demo)|per month\b|/month|search ranking|website traffic"
            r"|first page of|lead generation|web design"
            r"|guest post|our services|we (?:supply|offer"
            r"|manufacture|stock|distribute)\b|price list attached|we are a (?:leading"
            r"|supplier|manufacturer)|wholesale",
            re.IGNORECASE,
        ),
    ),
    (
        "application",
        5,
        re.compile(
            r"\b(?:my|attached) cv\b|\bvacanc|apprentice|work experience|job application"
            r"|bewerbung|resume attached|internship",
            re.IGNORECASE,
        ),
    ),
    (
        "notice",
        4,
        re.compile(
            r"tracking number|your parcel|has been dispatched|out for delivery|delivery note"
            r"|your (?:appointment|booking|subscription)"
            r"|password|verify your account|meter reading|your (?:insurance|policy|renewal)"
            r"|minutes of the",
            re.IGNORECASE,
        ),
    ),
)

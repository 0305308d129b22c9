"""A sentence's noun phrases, those of things that no table knows too, told by the words round them.

What is ours is a closed list; what is not is everything else. So a noun is known here by its place:
after an article, before a verb, before a size.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Literal

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES, FROM, LABELS, ROLES, SIDES, mark
from ledgerstone.enquiry.words.word_sets import word_set

PhraseKind = Literal["ours", "thing", "unknown", "size-noun", "pronoun", "speaker", "neutral"]

ARTICLES: Final = word_set(
    "a an the this that these those my our your his her its their another each every some any two"
    " three four both ein eine einen einem einer der die das den dem des unser unsere unserem"
    " unserer mein meine meinem meiner diese dieser dieses"
)
PREPOSITIONS: Final = word_set(
    "as than like for in of to at under over behind beside besides against between on along with"
    " into from by"
    " near onto above below underneath around inside off beneath past through next without within"
    " opposite across down up für im am an auf unter über hinter neben zwischen mit bei zum zur vom"
    " von aus ins vor ab gegen ohne"
)
VERBS: Final = word_set(
    "is are was were be been 's has have had measures measure measured stands stand stood sits sit"
    " sat runs run ran goes go comes come came projects takes take took needs need leaves leave"
    " sticks reaches ends gives makes wants wanted stays stay lies hangs fits turns holds allows"
    " rises will would must should can could might may does do did gets got weighs carries rests"
    " looks requires require starts start begins begin says said shows states asks calls reads"
    " gibt beginnt anfängt startet sagt zeigt ist sind war waren misst messen hat haben hatte steht"
    " stehen liegt"
    " liegen geht wird werden muss müssen soll sollen sollte braucht brauchen beträgt ragt kommt"
    " hängt bleibt passt"
)
_PRONOUNS: Final = word_set(
    "ours mine unsere meine it this that these those they them which who es sie dies das"
)
_SPEAKERS: Final = word_set("i we you me us ich wir uns i'm we're i'd we'd i've we've i'll we'll")
# What a customer calls the work itself, or what tells of it: no thing beside it.
_NEUTRAL: Final = word_set(
    "template leaflet instructions paper drawing drawings plan plans sketch spec sheet datasheet"
    " booklet website catalogue card label"
    " datenblatt brochure manual schablone skizze zeichnung piece pieces part parts bit bits one"
    " ones thing item job lot whole total rest size sizes measurement measurements dimension"
    " dimensions figure figures answer finish colour color shade surface section sections concrete"
    " stone end ends side sides edge edges corner corners middle centre center distance space span"
    " run runs leg legs return line wall-to-wall outside inside front back left right cut cutout"
    " grundform form quadrat rechteck kreis oval trapez trapezoid triangle dreieck footprint"
    " outline hole opening shape rectangle square circle oval ellipse l everything else something"
    " anything"
    " number order quantity maß maße stück teil teile seite kante ecke mitte ganze abstand"
    " idea plan thought maker makers manufacturer installer fitter plumber builder joiner"
    " carpenter electrician architect husband wife partner son daughter mother father mum dad"
    " brother sister neighbour friend tape ruler photo picture way long short bottom top face"
    " block board panel tread step landing coping plinth kerb bar counter beton farbe"
    " mm cm m in inch inches ft metre metres meter meters millimetres yard yards quarter"
    " half lefthand righthand hand price budget cost week weeks day days month months time project"
    " others other first second third fourth last next outer inner former latter two three four"
    " eine andere anderen erste zweite dritte"
    " kitchen bathroom design version revision rev gap overlap overhang radius arm arms wing wings"
)
_NO_NOUNS: Final = word_set(
    "and or but so because if when then than as not no only just also about approx approximately"
    " around roughly exactly nearly almost please thanks thank hi hello dear sorry now still"
    " already same"
    " there here too very quite really probably maybe perhaps overall full finished max maximum min"
    " minimum clear each both all total say well yes ok okay think thought mm cm m in inch inches"
    " ft x by und oder aber weil wenn dann als nicht nur auch etwa ca ungefähr genau bitte danke"
    " jetzt noch schon da hier zu sehr insgesamt je jeweils thick deep long wide high tall across"
    " round dia diameter concrete grey gray white black dark pale light honed polished plain"
    " smooth rough matt sealed waxed natural rectangular square circular undermount inset"
    " new neu neue neuer neuen centred centered central centrally mittig zentriert"
    " note see keep keeping kept mind remember assume allow"
    " what how where why which who whose let like either neither such much many few more most less"
    " reckons thinks suggests prefers fancies recommends told tells advised advises recommended"
    " meint glaubt findet"
    " beton grau weiß schwarz hell dunkel lang breit tief hoch stark dick rund quadratisch"
)


# Names of sizes that may be what a thing does, or how it is: "the kiln projects 300".
_LIKE_VERBS: Final = word_set(
    "projects projecting projection run runs comes sticks stands wide deep long thick tall high"
    " across broad up out over off below above beyond past away breit tief lang hoch dick stark"
)


_NOUNS_TOO: Final = word_set("stand rest")
_OWN_ARTICLES: Final = word_set("the a my our his her its")
_FOR_FAR: Final = 5  # atoms: "a hole, 70 mm, for the boiler pipe"
_PLATES: Final = frozenset({"plate", "platte", "base", "lid"})


@dataclass(slots=True)
class NounPhrase:
    """A noun with its article: its atoms, what it is, the preposition that leads it.

    ``noun`` is its last word. ``article`` is "" where it has none.
    """

    start: int
    end: int
    kind: PhraseKind
    noun: str = ""
    preposition: str = ""
    article: str = ""


def is_foreign(phrase: NounPhrase) -> bool:
    """Return whether a phrase names a thing that is none of ours."""
    return phrase.kind in ("thing", "unknown")


def is_noun(sentence: Sentence, i: int) -> bool:
    """Return whether a word may be a noun that no table knows."""
    word = sentence.words[i] if 0 <= i < len(sentence.atoms) else ""
    if len(word) < 3 or word.endswith("ly") or "'" in word:
        return False
    if word in _NOUNS_TOO and i and sentence.words[i - 1] in _OWN_ARTICLES:
        return True  # "the stand I made"
    closed = (_NO_NOUNS, VERBS, PREPOSITIONS, ARTICLES, _PRONOUNS, _SPEAKERS)
    return not any(word in words for words in closed) and not _size_noun(sentence.words, i)


def noun_phrases(sentence: Sentence, found: Sequence[Mention]) -> list[NounPhrase]:
    """Return the noun phrases of a sentence in order, in one pass over its atoms."""
    spans = {mention.start: mention for mention in found if mention.end > mention.start}
    made: list[NounPhrase] = []
    article = preposition = ""
    lead = -1  # where words that are part of the next noun begin
    i = 0
    while i < len(sentence.atoms):
        word = sentence.words[i]
        if i not in spans and word in ARTICLES and not _is_pronoun(sentence, i, spans):
            i, article = i + 1, word
            continue
        if i not in spans and word in PREPOSITIONS and not article:
            i, preposition = i + 1, word
            continue
        phrase = _phrase_at(sentence, i, spans)
        if phrase is None:
            i += 1
        elif phrase.noun:
            phrase.preposition = preposition or phrase.preposition
            phrase.article = article or phrase.article
            phrase.start = lead if lead >= 0 else phrase.start
            _settle(phrase, made[-1:])
            made.append(phrase)
            i = phrase.end
        else:
            lead = i if lead < 0 else lead  # "our usual thickness"
            i = phrase.end
            continue
        article, preposition, lead = "", "", -1
    return made


def _phrase_at(sentence: Sentence, i: int, spans: dict[int, Mention]) -> NounPhrase | None:
    """Return the phrase whose noun begins at an atom; one without a noun only leads to another."""
    word = sentence.words[i]
    if i in spans:
        named = _named(sentence, spans[i])
        if is_foreign(named):
            _compound(sentence, named, spans)
        return named
    if _is_pronoun(sentence, i, spans) or word.partition("'")[0] in _SPEAKERS:
        is_speaker = word.partition("'")[0] in _SPEAKERS
        return NounPhrase(i, i + 1, "speaker" if is_speaker else "pronoun", word)
    if count := _size_noun(sentence.words, i):
        return NounPhrase(i, i + count, "size-noun", sentence.words[i + count - 1])
    if not is_noun(sentence, i):
        return None
    end = _run(sentence, i, spans)
    if end in spans or _is_adjective(sentence, end):
        return NounPhrase(i, end, "unknown")  # "a garden wall"
    noun = sentence.words[end - 1]
    return NounPhrase(i, end, "neutral" if noun in _NEUTRAL else "unknown", noun)


def _is_pronoun(sentence: Sentence, i: int, spans: dict[int, Mention]) -> bool:
    """Return whether a word stands for a noun: "it", and "that" where no noun follows."""
    word = sentence.words[i]
    is_one = word != "'s" and word.partition("'")[0] in _PRONOUNS
    return is_one and not _leads_noun(sentence, i, spans)


def _settle(phrase: NounPhrase, before: Sequence[NounPhrase]) -> None:
    """Take what a hole is for as the hole's: "a cut-out for the toaster"."""
    is_part = phrase.noun in _PLATES and phrase.preposition in ("with", "mit")
    if is_part and before and is_foreign(before[0]):
        phrase.kind = "thing"  # "a sculpture with a base plate"
    is_for = phrase.kind == "unknown" and phrase.preposition in ("for", "für")
    if is_for and before and before[0].kind == "ours" and phrase.start <= before[0].end + _FOR_FAR:
        phrase.kind = "ours"


def _named(sentence: Sentence, mention: Mention) -> NounPhrase:
    """Return what a table knows as a phrase; what is called old is a thing that is there now."""
    is_thing = mention.is_old or mention.kind in ("thing", "room")
    noun = sentence.words[mention.end - 1]
    kind: PhraseKind = "thing" if is_thing else "ours"
    if is_thing and noun in ("ones", "one", "photo", "photos"):
        kind = "neutral"
    return NounPhrase(
        mention.start,
        mention.end,
        kind,
        noun,
        mention.preposition,
        mention.determiner,
    )


def _compound(sentence: Sentence, phrase: NounPhrase, spans: dict[int, Mention]) -> None:
    """Make one of a thing's name and the noun after it: "the pantry one", "the boot scraper"."""
    if phrase.end in spans or not is_noun(sentence, phrase.end):
        return
    phrase.end = _run(sentence, phrase.end, spans)
    phrase.noun = sentence.words[phrase.end - 1]
    phrase.kind = "neutral" if phrase.noun in _NEUTRAL else "unknown"


def _is_adjective(sentence: Sentence, end: int) -> bool:
    """Return whether the name of a size follows words, so that they only tell of it."""
    words = sentence.words
    return bool(_size_noun(words, end)) and words[end] not in _LIKE_VERBS


def _leads_noun(sentence: Sentence, i: int, spans: dict[int, Mention]) -> bool:
    """Return whether "this" or "that" is an article: a noun follows it."""
    if sentence.words[i] not in ARTICLES:
        return False
    return i + 1 in spans or is_noun(sentence, i + 1) or _size_noun(sentence.words, i + 1) > 0


def _size_noun(words: Sequence[str], i: int) -> int:
    """Return how many words name a size, a side or a middle at a place, 0 if they name none."""
    if i >= len(words) or not words[i]:
        return 0
    for table in (LABELS, ROLES, AXES, SIDES, mark("middle")):
        known = table.at(words, i)
        if known is not None and not (table is LABELS and known[0] in ("piece", "quantity")):
            return known[1]
    return 0


def _run(sentence: Sentence, start: int, spans: dict[int, Mention]) -> int:
    """Return where a run of words that may be nouns ends: "guinea pig hutch"."""
    end = start + 1
    while end < len(sentence.atoms) and end not in spans and is_noun(sentence, end):
        if FROM.at(sentence.words, end) is not None:
            break
        end += 1
    return end

"""What a name is by the words around it: a sink by its rim, a step of ours, a hole of a wall."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.words.lexicon import LABELS
from ledgerstone.enquiry.words.word_sets import word_set

_RIMS: Final = word_set("undermount undermounted mount inset overmount dropin in unterbau")
CAST: Final = word_set(
    "step steps tread treads coping copings lintel lintels stufe stufen plinth plinths cover covers"
)
_PREMISES: Final = word_set(
    "wall walls brickwork stonework masonry blockwork plaster plasterboard render chimney fireplace"
    " floor floorboards ceiling wand mauer mauerwerk putz decke boden kamin"
)
_INTO: Final = word_set("in into im")
_LEFT_BY: Final = (["left", "by"], ["where", "the"])
_MEASURES: Final = word_set("is are measures measure ist sind misst hat")
PIECES: Final = (["piece"], ["section"], ["slab"], ["teil"])
_CONCRETE: Final = (["concrete"], ["cast"], ["beton"])
_KINDS_OF: Final = word_set(
    "ring burner zone hole bowl plate drawer door seat seater person piece tier part flame flammig"
    " flammiges strand gang handle"
)
_PAIR: Final = 2
_PER: Final = frozenset({"per", "pro", "off", "no", "nr", "stück"})
_THEY: Final = frozenset({"they", "it", "this", "these", "which", "that"})
_FLOWS: Final = frozenset({"drain", "drains", "wastes", "waste"})
_OUTLETS: Final = frozenset({"waste", "drain"})
_COMES: Final = word_set("come comes leave leaves exit exits emerge emerges kommt kommen")
_AT: Final = frozenset({"at", "auf", "bei"})
_STUFF: Final = word_set(
    "slate marble granite oak wood timber formica laminate steel quartz pine teak plywood tiles"
    " plaster wooden schiefer marmor granit holz eiche laminat stahl gips"
)
_STUFF_LED: Final = ("schiefer", "marmor", "granit", "holz", "gips", "stahl")
_WITH: Final = frozenset({"with", "mit"})
_WERE: Final = (["was"], ["were"], ["war"], ["waren"])
_WHICH: Final = frozenset({"", "which", "that", "die"})
_LET_IN: Final = word_set(
    "socket sockets outlet outlets switch switches steckdose steckdosen schalter"
)
_STOPS: Final = word_set("from above below beside left right centred ; (")
_COOKERS: Final = frozenset({"cooker", "stove", "herd"})
_FOR: Final = frozenset({"for", "für"})
_CLAUSE: Final = 8
_LED: Final = 5
_WISHES: Final = word_set("need want require after like order brauche brauchen suche suchen möchte")
_SUPPORTS: Final = word_set(
    "pedestal pedestals leg legs frame frames base bases column columns trestle trestles pier piers"
    " bracket brackets gestell gestelle bein beine säule untergestell"
)
_OF_WALLS: Final = word_set(
    "the that this a side left right left-hand right-hand hand end back other"
)
_MARKS: Final = frozenset({":", "=", "-", "–"})
_AFTER_COUNT: Final = word_set(", ; . per pro je no nr off pcs stück stk x × ( each round")
_MOST: Final = 12
_TRADES: Final = word_set(
    "man men woman lady guy guys chap people fitter fitters installer sweep supplier merchant shop"
    " firm company maker makers builder builders"
)
_TURNS: Final = word_set("to for on in with over under und and für auf mit zu")


def by_rim(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Return sinks that only their kind of rim names: "double undermount 860 x 440"."""
    made = []
    for i, count in (*sentence.marks("shown"), *sentence.marks("covered")):
        end = i + count
        is_sized = end < len(sentence.atoms) and sentence.atoms[end].kind == "size"
        named = any(one.kind == "open" and i - _CLAUSE < one.start <= end for one in found)
        if is_sized and sentence.words[end - 1] in _RIMS and not named:
            made.append(Mention(i, end, "open", "sink"))
    return made


def is_asked_for(sentence: Sentence, mention: Mention) -> bool:
    """Whether a step or a coping is one of ours: its three sizes follow, and no verb before.

    So is whatever somebody asks for: "we need a plinth, 500 square".
    """
    if _is_wished(sentence, mention):
        return True
    led = sentence.words[max(0, mention.start - 1) : mention.start]
    if sentence.words[mention.end - 1] in CAST and led in _CONCRETE and not mention.is_old:
        return True  # "a polished concrete step"
    if sentence.words[mention.end - 1] not in CAST or mention.preposition or mention.is_old:
        return False
    ahead = sentence.atoms[mention.end : mention.end + _CLAUSE]
    first = next((i for i, atom in enumerate(ahead) if atom.kind == "size"), None)
    if first is None or _MEASURES & {atom.word for atom in ahead[:first]}:
        return False
    return any(atom.word in ("x", "×", "by", "mal") for atom in ahead[first : first + 2])


def _is_wished(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a wish leads to a thing at once, and a size comes next."""
    if not mention.is_indefinite or mention.preposition or mention.is_old:
        return False
    led = sentence.words[max(0, mention.start - _LED) : mention.start]
    wishes = [i for i, word in enumerate(led) if word in _WISHES]
    if not wishes or any(word in _TURNS or not word for word in led[wishes[-1] :]):
        return False
    ahead = sentence.atoms[mention.end : mention.end + 2]
    return any(atom.kind == "size" for atom in ahead)


def is_along(words: Sequence[str], before: Mention, i: int) -> bool:
    """Return whether a wall is the one that a leg runs along: "comes down that side wall"."""
    return before.kind == "leg" and set(words[before.end : i]) <= _OF_WALLS


def is_of_support(sentence: Sentence, found: list[Mention], mention: Mention) -> bool:
    """Return whether a plate is a pedestal's: "on a pedestal; the plate on top of that is 400"."""
    words = sentence.words
    named = words[mention.start : mention.end][-1:]
    is_on_top = words[mention.end : mention.end + 3] == ["on", "top", "of"]
    is_led = any(one.kind == "thing" and words[one.end - 1] in _SUPPORTS for one in found)
    if mention.determiner in ("the", "its", "die"):
        return named in (["plate"], ["platte"]) and (is_led or is_on_top)
    return named == ["plate"] and is_led  # "on a pedestal with a 400 mm plate"


def labelled_count(sentence: Sentence, mention: Mention) -> int:
    """Return the number in "Basins: 2, round", where a line begins with a name; 0 if there is none.

    A line of sizes has no such number: "Sink: 9, 400 from left" says no count of a singular.
    """
    at, atoms = mention.end, sentence.atoms
    is_field = sentence.starts_line and mention.start <= 1 and mention.is_plural
    led = [atom.word for atom in atoms[at + 2 : at + 3]]
    is_field = is_field or (mention.is_plural and bool(_PER & set(led)))  # "holes: 4 per slab"
    if not is_field or at + 1 >= len(atoms) or atoms[at].word not in _MARKS:
        return 0
    size = atoms[at + 1].size
    is_few = size is not None and size.unit is None and size.amount.denominator == 1
    ends = at + 2 == len(atoms) or atoms[at + 2].word in _AFTER_COUNT | _RIMS
    return int(size.amount) if size is not None and is_few and ends and size.amount <= _MOST else 0


def is_of_premises(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a hole is one of the building: "the hole that it left in the wall"."""
    words = sentence.words
    if _is_service(sentence, mention):
        return True
    if mention.kind != "hole" or mention.determiner in ("", "its", "ihr"):
        return False
    if words[mention.end : mention.end + 2] in _LEFT_BY:
        return True
    for i in range(mention.end, min(mention.end + _CLAUSE, len(words))):
        if not words[i]:
            return False
        if words[i] in _INTO:
            return bool(_PREMISES & set(words[i + 1 : i + 4]))
    return False


def is_verb(words: Sequence[str], i: int) -> bool:
    """Return whether a word is what something does: "it drains into a bucket"."""
    return words[i] in _FLOWS and bool(_THEY & set(words[max(0, i - 1) : i]))


def _is_service(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a pipe is told by where it comes out: "the waste comes up at 540"."""
    if mention.name not in _OUTLETS or mention.names_hole:
        return False
    ahead = sentence.atoms[mention.end : mention.end + _CLAUSE]
    at = next((i for i, atom in enumerate(ahead[:_PAIR]) if atom.word in _COMES), None)
    if at is None:
        return False
    sized = next((i for i, atom in enumerate(ahead) if atom.kind == "size"), None)
    return sized is not None and ahead[sized - 1].word in _AT


def tells_trade(words: Sequence[str], mention: Mention) -> bool:
    """Return whether a thing only tells what someone deals in: "the window man says"."""
    after = words[mention.end : mention.end + 1]
    return mention.kind in ("thing", "slab") and bool(_TRADES & set(after))


def tells_kind(atoms: Sequence[Atom], i: int, mention: Mention) -> bool:
    """Return whether a number is part of a name: "a two-ring hob", "a three-hole tap"."""
    return i + 1 < mention.start and atoms[i + 1].word in _KINDS_OF


def are_counted(sentence: Sentence, mention: Mention) -> bool:
    """Return whether so many "ones" have two sizes of their own after them."""
    ahead = sentence.atoms[mention.end : mention.end + 2]
    is_pair = len(ahead) > 1 and ahead[0].size is not None and ahead[1].word in ("x", "×", "by")
    return is_pair and mention.count > 0 and not mention.is_old


def is_let_in(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a socket's own size follows, so that it is let in: "Sockets: 145 x 85"."""
    if sentence.words[mention.end - 1] not in _LET_IN or mention.is_denied or mention.is_old:
        return False
    if mention.preposition and mention.preposition not in _FOR:
        return False
    for atom in sentence.atoms[mention.end : mention.end + _CLAUSE]:
        is_size = atom.size is not None and (atom.size.unit is not None or atom.size.amount > _MOST)
        if is_size or atom.word in _STOPS:
            return is_size
    return False


def is_cookers_hole(words: list[str], before: Mention | None, mention: Mention) -> bool:
    """Return whether a cooker is what a hole is for: "cutting for cooker 56 x 49"."""
    if before is None or before.kind != "hole" or words[mention.start] not in _COOKERS:
        return False
    return mention.preposition in _FOR or before.end == mention.start


def whole_word(word: str, tag: str) -> str:
    """Return what a German compound is: a "Spülenausschnitt" is a sink's hole."""
    if tag in ("hole:", "hole:slot"):
        for part, name in (
            ("spül", "sink"),
            ("becken", "basin"),
            ("kochfeld", "hob"),
            ("hahn", "tap"),
            ("armatur", "tap"),
            ("kabel", "cable"),
            ("schirm", "parasol"),
            ("ablauf", "waste"),
        ):
            if part in word:
                return f"open:{name}"
    return tag


def is_of_other_stuff(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a slab is of what we do not cast, or is replaced: "a slab of slate"."""
    words = sentence.words
    led = words[: mention.start]
    replaces = [i for i, word in enumerate(led) if word in ("replace", "replaces", "replacing")]
    if mention.preposition in ("replace", "replacing") and replaces:
        is_subject = replaces[-1] > 0 and led[replaces[-1] - 1] in _THEY
        if mention.kind == "slab" and is_subject:
            return True  # "they replace two teak seats, 1500 long"
    after = words[mention.end : mention.end + _PAIR]
    was = [word for word in words[mention.end : mention.end + _CLAUSE] if word not in _WHICH]
    if mention.kind == "slab" and was[:1] in _WERE and _STUFF & {*was[1:2]}:
        return True  # "my mother's top, which was slate and 1650 long"
    name = words[mention.start]
    is_stuff = bool(_STUFF & set(led[-1:])) or (name.startswith(_STUFF_LED))
    if mention.kind == "slab" and mention.preposition in _WITH and is_stuff:
        return True  # "on a table with a marble slab on it"
    return mention.kind == "slab" and after[:1] in (["of"], ["aus"]) and bool(_STUFF & {*after[1:]})


def is_size_for(words: Sequence[str], i: int) -> bool:
    """Return whether a size is only told for someone: "size for the concrete people is …"."""
    led = words[max(0, i - _LED) : i]
    return "for" in led and any(
        (found := LABELS.at(led, k)) is not None and found[0] != "piece"
        for k in range(led.index("for"))
        if led[k]
    )

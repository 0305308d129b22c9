"""A letter's assumptions beside its questions."""

from ledgerstone.papers.asking import taken_sentences


def test_a_value_with_a_question_is_not_listed_as_taken() -> None:
    """A place of which one figure is asked is not stated too; what no question is of is."""
    assumed = [
        {"at": "/slabs/0/cutouts/0/centre", "says": "place"},
        {"at": "/slabs/0/cutouts/10/centre", "says": "other"},
        {"at": "/slabs/0/thickness", "says": "thick"},
        {"at": "/slabs/0/edges", "says": "edges"},
    ]
    missing = [
        {"at": "/slabs/0/cutouts/0/centre/y", "asks": "y?"},
        {"at": "/slabs/0/thickness", "asks": "thick?"},
    ]
    assert taken_sentences(assumed, missing) == ("other", "edges")
    assert taken_sentences(assumed, []) == ("place", "other", "thick", "edges")


def test_a_question_that_is_not_put_leaves_what_was_taken() -> None:
    """Three questions are asked; the value of a fourth is told as taken."""
    places = ("outline/length", "outline/width", "thickness", "shade/name")
    entries = [{"at": f"/slabs/0/{at}", "asks": f"{at}?", "says": at} for at in places]
    assert taken_sentences(entries, entries) == ("shade/name",)

"""A comparison of recordings finds what differs, and names where."""

from recorder.comparing import differences, report

BEFORE = [
    {"name": "one", "quote": {"status": 200, "body": {"total": "10.00", "slabs": [{"kg": 1}]}}},
    {"name": "two", "quote": {"status": 422, "body": {"findings": ["a", "b"]}}},
]


def test_a_recording_is_as_itself() -> None:
    """A recording compared with itself differs nowhere, and the report says so."""
    assert differences(BEFORE, BEFORE) == []
    assert report([], 2) == "0 of 2 cases differ"


def test_a_member_that_changed_is_named() -> None:
    """What changed, went or came is reported with its case, its path and both values."""
    after = [
        {"name": "one", "quote": {"status": 200, "body": {"total": "9.00", "slabs": [{"kg": 2}]}}},
        {"name": "two", "quote": {"status": 422, "body": {"findings": ["a"], "more": 1}}},
        {"name": "three", "quote": {}},
    ]
    found = {(one.case, one.path): (one.before, one.after) for one in differences(BEFORE, after)}
    assert found == {
        ("one", "/quote/body/total"): ("10.00", "9.00"),
        ("one", "/quote/body/slabs/0/kg"): (1, 2),
        ("two", "/quote/body/findings"): (["a", "b"], ["a"]),
        ("two", "/quote/body/more"): (None, 1),
        ("three", ""): (None, {"name": "three", "quote": {}}),
    }


def test_members_are_grouped_whatever_their_index() -> None:
    """One line stands for a member of every slab, with how often it differs."""
    before = [{"name": "n", "slabs": [{"kg": 1}, {"kg": 1}]}]
    after = [{"name": "n", "slabs": [{"kg": 2}, {"kg": 3}]}]
    assert "2 /slabs/*/kg   in n" in report(differences(before, after), 1)

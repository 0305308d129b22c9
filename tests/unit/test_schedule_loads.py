"""Which pieces lie on the casting table together, and how many moulds are made for them."""

from dataclasses import replace

from ledgerstone.message import Message
from ledgerstone.schedule import moulds_to_try
from ledgerstone.schedule.loads import loads_of
from ledgerstone.work import Operation, tables_for
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import CastingTable

TABLE = CastingTable(length_mm=2700, width_mm=1200)


def steps(moulds: int) -> list[Operation]:
    """A long slab, and nine small ones of so many moulds."""
    long, small = (2600.0, 500.0), (1300.0, 300.0)
    return [
        Operation(Message("mould"), "mould", 0, 1.0),
        Operation(Message("mould"), "mould", 1, 1.0 * moulds, pieces=moulds),
        Operation(Message("cast"), "cast", 0, 1.0, table_mm=long),
        Operation(Message("cast"), "cast", 1, 9.0, pieces=9, table_mm=small),
    ]


def test_no_mould_is_made_for_nothing() -> None:
    """Beside the long slab two rows of two fit, then the other five: more than five idle."""
    assert moulds_to_try(steps(9), TABLE) == ((1, 1), (1, 5))
    loads = loads_of(steps(5), TABLE)
    assert [len(load.pieces) for load in loads] == [1 + 4, 5]
    assert [len(load.new_moulds) for load in loads] == [1 + 4, 1]


def test_a_mould_that_is_listed_is_made() -> None:
    """Where the list of work has more moulds than are needed, they are laid too: they are paid."""
    loads = loads_of(steps(8), TABLE)
    assert sum(len(load.new_moulds) for load in loads) == 1 + 8


def test_a_second_table_takes_more_at_once(workshop: Workshop) -> None:
    """With two tables all nine lie beside the long one."""
    two = replace(workshop.table, length_mm=2700, width_mm=1200, count=2)
    assert moulds_to_try(steps(9), two) == ((1, 1), (1, 9))


def test_a_piece_longer_than_a_table_has_one_to_itself() -> None:
    """Two of 3500 mm take two tables, however shallow; two of 2700 share one."""
    assert tables_for([(3500.0, 200.0)] * 2, TABLE) == 2
    assert tables_for([(2700.0, 200.0)] * 2, TABLE) == 1

"""Plans of slabs, drawn and read back."""

from collections.abc import Iterator
from xml.etree import ElementTree as ET

from ledgerstone.drawing import TitleBlock, draw_plan
from ledgerstone.order import Slab
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.drawing_reader import read
from support.drawn_slabs import TITLE, Drawn


def plan_of(drawn: Drawn | Slab, workshop: Workshop, title: TitleBlock = TITLE) -> ET.Element:
    """Draw a slab's plan and read it back."""
    drawn = drawn if isinstance(drawn, Drawn) else Drawn(drawn)
    shape = shape_of(drawn.slab, workshop)
    return read(draw_plan(drawn.slab, shape, title=title, pins=drawn.pins))


def parts(root: ET.Element, part: str) -> Iterator[ET.Element]:
    """Return the elements that are marked as a part."""
    return (node for node in root.iter() if node.get("data-part") == part)

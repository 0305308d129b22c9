"""Everything that strength says of a slab: the same, whatever was worked out before."""

import pytest
from shapely.geometry import Polygon

from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import OutlineUnusableError
from ledgerstone.stages import StageCache
from ledgerstone.strength.governing import Governing, worst_of
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of
from ledgerstone.strength.verdict import Verdict, worst
from ledgerstone.workshop import Workshop
from support.calibration import JOBS, TODAY
from support.documents import Json
from support.slabs import box, hole, slab_json, stages_of
from support.stages import Stages

NAMES = ("a vanity with two bowls", "a 300 mm breakfast overhang", "a bench on legs")


def _stages(document: Json, workshop: Workshop, plates: Plates) -> Stages:
    return Stages(read_order(document, workshop), workshop, None, TODAY, StageCache(plates))


def _said(document: Json, workshop: Workshop, plates: Plates) -> str:
    """Every digit of every verdict."""
    found = _stages(document, workshop, plates).strength
    return repr([(one.handled, one.flat_by_the_ends, one.in_place) for one in found])


@pytest.mark.parametrize("name", NAMES)
def test_what_was_kept_before_changes_no_digit(name: str, workshop: Workshop) -> None:
    """Byte for byte the same from an empty store, after other slabs, thicknesses and rests."""
    fresh = _said(JOBS[name], workshop, Plates())
    plates = Plates()
    slab = JOBS[name]["slabs"][0]
    others = [{**slab, "thickness": h} for h in (50, 30)]
    others += [{**slab, "rests": {"kind": "ends", "depth": 40}}, slab_json(box(900, 400))]
    for other in others:
        _said({"slabs": [other]}, workshop, plates)
    assert _said(JOBS[name], workshop, plates) == fresh
    assert _said(JOBS[name], workshop, plates) == fresh


def test_a_change_of_thickness_or_rests_keeps_the_plate(workshop: Workshop) -> None:
    """One plan is meshed once, whatever its thickness and rests."""
    plates = Plates()
    models = set()
    for thickness in (30, 40, 60):
        stages = _stages(
            {"slabs": [slab_json(box(900, 400), thickness=thickness)]}, workshop, plates
        )
        shape = stages.shapes[0]
        models.add(id(plates.of(shape.outline, thickness, 33_000.0).model))
    assert len(models) == 1


def test_reliefs_of_other_depths_share_the_mesh_and_change_no_digit(workshop: Workshop) -> None:
    """A drainer at three thicknesses: one mesh, three factors, each as from an empty store."""
    drainer = {
        "outline": box(400, 300),
        "at": {"x": 100, "y": 130},
        "depth": 6,
        "kind": "drainer",
    }
    plates, meshes = Plates(), set()
    for thickness in (60, 40, 50):
        slab = slab_json(box(1400, 560), thickness=thickness, reliefs=[drainer])
        slab["rests"] = {"kind": "ends", "depth": 40}
        stages = _stages({"slabs": [slab]}, workshop, plates)
        again = _said({"slabs": [slab]}, workshop, plates)
        assert again == _said({"slabs": [slab]}, workshop, Plates())
        plate = plate_of(stages.order.slabs[0], stages.shapes[0], concrete_of(workshop), plates)
        meshes.add(id(plate.model.mesh))
    assert len(meshes) == 1


def test_the_store_is_bounded() -> None:
    """Of five plans the one that was asked for longest ago goes."""
    plates = Plates(most=4)
    from shapely.geometry import box as rectangle  # noqa: PLC0415 - one test's own name for it

    first = plates.of(rectangle(0, 0, 400, 300), 40, 33_000.0).model
    for length in (500, 600, 700, 800):
        plates.of(rectangle(0, 0, length, 300), 40, 33_000.0)
    assert plates.of(rectangle(0, 0, 800, 300), 40, 33_000.0).model is not first
    assert plates.of(rectangle(0, 0, 400, 300), 40, 33_000.0).model is not first


def test_the_worst_is_the_first_of_equals_and_tipping_before_all() -> None:
    """Ties go to the first; what tips is worse than any stress."""
    one, other = Governing(2.0, (0, 0)), Governing(2.0, (9, 9))
    assert worst_of([one, other]) is one
    tipped = Governing(0.0, (5, 5), tips=True)
    assert worst_of([one, tipped]) is tipped
    first, second = (Verdict("turned", 1.0, 2.0, (x, 0.0), 3.0) for x in (0.0, 1.0))
    assert worst([first, second]) is first
    assert worst([]) is None


def test_concrete_without_strength_is_never_fine() -> None:
    """At age zero nothing is trusted."""
    assert Verdict("turned", 0.0, 0.0, (0.0, 0.0), 0.0).utilisation > 1.0


def test_mirrored_slabs_are_used_alike(workshop: Workshop) -> None:
    """A bowl to the left or to the right: the same utilisation, within the mesh's 3 %."""
    left, right = (
        stages_of(
            read_order(
                {
                    "slabs": [
                        slab_json(
                            box(1400, 560), hole(360, x, 270), rests={"kind": "ends", "depth": 50}
                        )
                    ]
                },
                workshop,
            ),
            workshop,
            TODAY,
        ).strength[0]
        for x in (450, 950)
    )
    for one, other in zip(left.in_place.verdicts, right.in_place.verdicts, strict=True):
        assert one.case == other.case
        assert one.utilisation == pytest.approx(other.utilisation, rel=0.03, abs=0.01)


def test_a_rounded_slab_has_no_node_outside_it(workshop: Workshop) -> None:
    """A free point whose neighbours all go stays where it was, and no stiffness is missing.

    Found by random orders: such a point went to (0, 0), which a rounded corner leaves bare.
    """
    radii = {"front-left": 130, "back-left": 132, "back-right": 188, "front-right": 225}
    slab = slab_json(box(1072, 502, corner_radii=radii), hole(100, 314, 161))
    stages = _stages({"slabs": [slab]}, workshop, Plates())
    mesh = plate_of(
        stages.order.slabs[0], stages.shapes[0], concrete_of(workshop), Plates()
    ).model.mesh
    assert set(range(len(mesh.nodes))) == set(mesh.triangles.ravel().tolist())


def test_reliefs_whose_edges_tangle_are_worked_out(workshop: Workshop) -> None:
    """Two reliefs over each other, almost touching along an edge: an answer, and soon.

    Found by random orders: the edges could not all be kept, and halving them took half a minute.
    """
    square = {"kind": "rectangle", "length": 90, "width": 90, "corner_radius": 1}
    disc = {"kind": "round", "diameter": 90}
    reliefs = [
        {"kind": "recess", "outline": square, "depth": 4, "at": {"x": 3, "y": 0}},
        {"kind": "recess", "outline": disc, "depth": 2, "at": {"x": 0, "y": 2}},
    ]
    slab = slab_json(box(672, 394), thickness=50, reliefs=reliefs)
    assert _stages({"slabs": [slab]}, workshop, Plates()).strength[0].handled.suffices


def test_a_plan_without_an_answer_is_not_tried_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """It takes long to find out that no mesh covers a plan: once is enough."""
    tries = []

    def refuse(*_: object, **__: object) -> None:
        tries.append(1)
        raise OutlineUnusableError("The outline cannot be covered by triangles.")

    monkeypatch.setattr("ledgerstone.strength.slabs.Plate", refuse)
    plates = Plates()
    for thickness in (30.0, 40.0):
        with pytest.raises(OutlineUnusableError, match="covered by triangles"):
            plates.of(Polygon([(0, 0), (400, 0), (400, 300)]), thickness, 33_000.0)
    assert len(tries) == 1

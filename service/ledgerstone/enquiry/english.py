"""English words of enquiries, by what they name. Each line is a list, parted by commas."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

NOUNS: Final = MappingProxyType(
    {
        "slab:worktop": "worktop, work top, worktops, work tops, wktop, wktp, worksurface, work"
        " surface, countertop, counter top, countertops, counter tops, counter, counters, kitchen"
        " top, kitchen worktop, kitchen plate, kitchen counter, laundry counter, vanity top,"
        " vanity tops, vanity, vanity unit top, vanity counter, basin top, basin tops, washbasin"
        " top, sink top, sink run, hob run, washstand top, washstand, bathroom top, island top,"
        " island, island worktop, island slab, bar top, bar tops, bar counter, breakfast bar,"
        " breakfast bar top, counter slab, bench top, benchtop, utility top, utility worktop,"
        " kitchen bench top, server, servery top, serving top, bar",
        "slab:table": "table, tables, table top, table tops, tabletop, tabletops, dining table,"
        " dining table top, coffee table, coffee table top, cafe table, cafe table top, cafe table"
        " tops, cafe tables, side table, side table top, console table, console top, console table"
        " top, desk, desk top, desktop, desks, desk tops, table plate, round table, round table"
        " top, bistro table top, garden table, garden table top, outdoor table, patio table,"
        " picnic table top, dining top, kitchen table, kitchen table top, conference table top,"
        " bistro top, bistro tops",
        "slab:hearth": "hearth, hearths, hearth slab, hearthstone, fireplace base, stove base,"
        " base for my fire stove, base for the stove, base for my stove, base for our stove, base"
        " for a stove, base for the fire, stove plate, stove slab, back hearth",
        "slab:shelf": "shelf, shelves, floating shelf, floating shelves, wall shelf, mantel,"
        " mantelpiece, mantel shelf, mantle shelf, ledge, hall shelf, bookshelf, bookshelves",
        "slab:sill": "sill, sills, cill, cills, window sill, window sills, windowsill,"
        " windowsills, window cill, window cills, window board, window boards, windowboard",
        "slab:upstand": "upstand, upstands, up stand, up stands",
        "slab:splashback": "splashback, splashbacks, splash back, splash backs, backsplash,"
        " backsplashes, back splash",
        "slab:end-panel": "end panel, end panels, waterfall panel, gable panel, side panel",
        "slab:bench": "bench, benches, bench seat, bench seats, garden bench, seat slab, bench"
        " slab, seat, garden seat, sitting bench",
        "slab:": "left run, right run, left-hand run, right-hand run, left hand run,"
        " right hand run,"
        " slab, slabs, top, tops, concrete plate, cover slab, plate, coping",
        "open:sink": "sink, sinks, belfast, belfast sink, butler sink, kitchen sink, sink bowl,"
        " sink unit cut out, inset sink",
        "open:basin": "basin, basins, washbasin, wash basin, washbasins, hand basin, bowl, bowls,"
        " vanity basin, vessel, washbowl, vanity bowl",
        "open:hob": "hob, hobs, cooktop, cook top, cooktops, cooking field, induction hob, gas"
        " hob, ceramic hob, induction cooktop, induction, gas ring, gas cooktop, cooking plate,"
        " rangetop, teppanyaki",
        "open:tap": "tap, taps, faucet, faucets, mixer, mixer tap, tap holes, pillar tap,"
        " monobloc, spout, water tap, taphole, tapholes, mixer taps",
        "open:waste": "waste, wastes, waste pipe, waste outlet, plug hole, plughole",
        "open:drain": "drain, drains",
        "open:parasol": "parasol, parasols, umbrella, sunshade, parasol pole",
        "open:cable": "cable, cables, cable grommet, grommet, grommets, wires, cable outlet, cable"
        " tidy, cord, cords, flex, wiring",
        "open:grill": "grill, ceramic grill, barbecue, bbq, kamado, smoker, pizza oven, fire bowl,"
        " fire pit, burner",
        "open:planter": "planter, planters, planting trough, plant pot, herb trough",
        "open:socket": "pop up socket, pop-up socket, pop up, socket tower, pop up sockets",
        "open:soap": "soap pump, soap dispenser, lotion dispenser",
        "open:flue": "flue, flue pipe, chimney pipe, stove pipe, chute, laundry chute",
        "open:bin": "bin, bin chute, compost chute, waste chute, knife slot, knife block",
        "hole:circle": "bore, drilling",
        "hole:": "hole, holes, cutout, cutouts, cut out, cut outs, cut-out, cut-outs, opening,"
        " openings, aperture, apertures, knockout",
        "hole:slot": "slot, slots",
        "thing:old": "old top, old one, existing one, existing, old slab, old stone, sample",
        "thing:": "piece where, space where, door, doors, doorway, doorways, gate, gates, lane,"
        " passage, passageway,"
        " corridor, gap, ceiling, ceilings, alcove, recess, reveals, reveal, chimney breast,"
        " cabinet, cabinets, unit, units, carcass, carcasses, cupboard, cupboards, base unit, base"
        " units, base, bases, pedestal, pedestals, leg, legs, frame, frames, pier, piers"
        ", blockwork,"
        " brackets, bracket, trough, stool, stools, pole, poles, machine, washing machine, washer,"
        " dryer, dishwasher, fridge, freezer, cooker, cookers, range, oven, stove, wood burner,"
        " log burner, woodburner, fire stove, mirror, mirrors, car, trailer, van, boot, truck,"
        " lorry, sheet, ply, tile, tiles, radiator, window, windows, appliance, sofa, chair,"
        " chairs, ones, box, pallet, lift, elevator, stairs, staircase, stair, steps, step, budget,"
        " vanity cabinet, wall, walls, fence, knee wall, joist, joists, floor, floors, casting"
        " table, our table, work bench, studs, beam, beams, chimney, fireplace, mantel beam,"
        " skirting, plinth, hinge, drawer, drawers, patio, terrace, balcony, lawn, path, driveway,"
        " drive, worktop saw, parasol base, carpet, rug, bed, bath, bathtub, shower, toilet, loo,"
        " cistern, pan, pans, trolley, wheelbarrow, crate, plinths, lining,"
        " photo, photos, microwave, kettle, coffee machine, monitor, printer, tv,"
        " piano, trestles, trestle, supports, support, splash, tread, sideboard, hallway, stone"
        " trough, socket, sockets, outlet, outlets, switch, pot filler, soil pipe, boiler, meter",
        "room:indoors": "kitchen, bathroom, living room, sitting room, lounge, hall, hallway,"
        " utility, utility room, study, office, studio, conservatory, bedroom, cloakroom, powder"
        " room, en suite, ensuite, dining room, laundry, laundry room, pantry, larder, wc, loo,"
        " toilet, landing, porch, playroom, snug, den, basement, wash room, washroom, cafe, shop,"
        " office kitchen, front room, restaurant",
        "room:wet-room": "wet room, wetroom, wet-room, shower room",
        "room:outdoors": "garden, patio, terrace, yard, balcony, deck, outdoor kitchen, pool,"
        " outdoors, outside, outdoor, roof terrace, courtyard, veranda, backyard, porch outside",
        "room:": "room, rooms, hut, house, cottage, shed, potting shed, barn, plot, flat,"
        " apartment,"
        " building, garage, workshop, space, place",
        "leg:back": "back run, back leg, long leg, longer leg, long side, longer side, long part,"
        " long arm, longer run, main run, main leg, back part, part along the back, back section,"
        " long run, longer arm, along the back wall, along the back, wall opposite you, one leg,"
        " first leg, rear run, window run",
        "leg:side": "return, left leg, right leg, left-hand leg, right-hand leg, short leg,"
        " shorter leg, side leg, short side, shorter side, short"
        " part, short arm, shorter run, side run, shorter arm, other leg, second leg, short run,"
        " return leg, comes forward, comes out, comes towards you, comes toward you, part down the"
        " left, part down the right, down the left, down the right, down the left hand wall, down"
        " the right hand wall, down the left-hand wall, down the right-hand wall, the left-hand"
        " part, the right-hand part, side part, side section, runs forward, along the left wall,"
        " along the right"
        " wall, along the left, along the right, on the other, on the left wall, on the right wall",
        "leg:both": "both legs, both bits, both parts, both sides, both runs, both arms, both"
        " pieces of it, each leg, both wings, legs both, legs are both, both of the legs",
        "leg:notch": "bit missing, missing bit, missing part, missing corner, missing piece, notch,"
        " cut away, left out, leaves out, part missing, corner missing, inside corner piece,"
        " missing from, missing",
        "feature:": "chamfer, chamfers, chamfered, bevel, bevels, bevelled, beveled, radius, radii,"
        " radiused, rounded, rounding, roundover, round over, rounded over, arris, eased, drip,"
        " drip groove, groove, bullnose, pencil round, overhang, lip, nosing, tolerance, silicone,"
        " joint, gap each end, clearance, quarter round, fall, mitre, sample tile",
    }
)
PLACES: Final = MappingProxyType(
    {
        "indoors": "cellar, kitchen, bathroom, living room, sitting room, lounge, hall, hallway,"
        " utility,"
        " utility room, study, office, studio, conservatory, bedroom, cloakroom, powder room, en"
        " suite, ensuite, dining room, laundry, pantry, larder, landing, playroom, snug, basement,"
        " wash room, washroom, cafe, front room, indoors, indoor, restaurant, sun room, sunroom,"
        " boot room, mud room, toilet, downstairs loo, orangery, kitchenette, laundry room",
        "wet-room": "wet room, wetroom, shower room",
        "outdoors": "garden, patio, terrace, yard, balcony, outdoor kitchen, outdoors, outside,"
        " outdoor, roof terrace, courtyard, veranda, backyard, back yard, decking, gazebo, pergola",
    }
)

# Words that give a size its role: what stands after it, and what names it before.
ROLES: Final = MappingProxyType(
    {
        "long": "long, length, in length, of length, lengthways, lengthwise, end to end, overall length",
        "wide": "wide, width, in width, of width, width ways, broad",
        "deep": "deep, depth, front to back, in depth, of depth, front-to-back, from front to back, back to front, from back to front",
        "thick": "thick, thk, in thickness, of thickness, thickness, thick all over",
        "high": "high, tall, in height, of height, upright",
        "dia": "dia, diam, in diameter, of diameter, diameter, diametre, ø, dia.",
        "across": "across, round, across the middle, circular",
        "radius": "radius, rad",
        "apart": "apart, between, clear, inside, centres apart, over each end, each end, off the"
        " floor, off the ground, spare, overhang, away, below, down the road, miles, of space,"
        " overlap, each side, either end, bigger, smaller, longer, wider, thicker, shorter, deeper,"
        " extra, more, less, out, too long, too short, higher, lower, off, up, over"
        ", between the, widespread, spread, spacing, centerset, outside diameter",
        "x": "of the width, of the length, on the length, on its length, on the width, on its"
        " width, side to side, left to right, the long way, along,"
        " along the length, along the wall,"
        " long way, lengthways, in the long direction, going left to right, parallel to the front,"
        " along the front, running left to right, parallel to the front edge, along the front edge, runs along, running along, goes along, going along, lengthways, along it, along the worktop, along the top, along"
        " the back wall, wide, long, in the length, along the slab, along the back",
        "y": "of the depth, front to back, front-to-back, from front to back, deep, back to front, from back to front",
    }
)
LABELS: Final = MappingProxyType(
    {
        "long": "length, lenght, long, lengths, l, run, len, total length, overall length, left to right"
        ", from left to right, side to side, end to end",
        "wide": "width, wide, widths, w, breadth",
        "deep": "depth, deep, d, depths, front to back, from front to back, back to front, from back to front, from the wall to the front, from wall to front, wall to front, from the back to the front, from the front to the back",
        "thick": "thickness, thick, thk, thicknes, t, thckness, th",
        "high": "height, high, tall, h",
        "dia": "diameter, dia, diam, ø, diametre",
        "radius": "radius",
        "size": "size, sizes, dimensions, dims, measures, measurements, l x w x t, l x w"
        ", l x d x t,"
        " finished size, overall size",
        "quantity": "qty, quantity, pieces, pcs, number, no, no off, how many, count, off",
        "piece": "piece, item, what, position, pos, description, part, product, component, room",
        "cutouts": "cut outs, cutouts, cut-outs, holes, cut out, cutout, openings",
    }
)
FROM: Final = (
    "from, off, from the, forward of, forward from, in from, out from, away from, back from, short of"
    ", in off"
)
SIDES: Final = MappingProxyType(
    {
        "left": "left, lh, lhs, left-hand, lefthand, l/h",
        "right": "right, rh, rhs, right-hand, righthand, r/h",
        "front": "front, near edge, front edge",
        "back": "back, rear, wall, behind",
    }
)
MARKS: Final = MappingProxyType(
    {
        "not": "ignore, forget, not, no, without, none, never, nothing, don't, doesn't, isn't,"
        " aren't, shan't,"
        " won't, didn't, wouldn't, neither, nor, don’t, doesn’t, isn’t, aren’t, shan’t, won’t,"
        " didn’t, needn't, needn’t, nowt, dont, nil, haven't, haven’t, can't, can’t",
        "instead": "instead of, rather than, and not, in place of, as opposed to",
        "correct": "sorry, correction, actually, meant, i mean, should read,"
        " revised, revision, changed, change, rang back, hang on, excuse me, wrong, mistake"
        ", update,"
        " updated, oops, scrap that, scrap, instead, go with, no longer, measured again"
        ", remeasured,"
        " re-measured, re measured, in fact, ps, p.s, apologies, typo, my error, i mistyped, make"
        " that, wait, on second thoughts, second thoughts, again properly, properly this"
        " time, it turns out, turns out, amend, amended, amendment, new size, now measures, i look"
        " now, has measured, called back, phoned back, correct that, on reflection, edit",
        "old": "old, existing, current, present one, previous, former, neighbour's, neighbor's,"
        " sister's, friend's, mum's, brother's, tiled one, last one, last lot",
        "gone": "i'd said, i had said, i'd written, i had written, i'd given, i'd told you, previously, that was the, that was a, which was a, it was a, that was an, that was only, original enquiry"
        " was, originally, original order was, first plan was,"
        " seen better days, past its best, had its day, falling apart, freestanding,"
        " free-standing, free standing, one now, one there now,"
        " one in there, at the moment, there now, presently, currently, in there now,"
        " being replaced,"
        " replaces, replacing, to be replaced, coming out, coming off, at present, we have now,"
        " already there, already have, already has, got now, used to be, ripped out, next door,"
        " that's there, going in the skip, go in the skip, that we have, in place now"
        ", in at present",
        "new": "new, new one, replacement, i want, we want, i'd like, we'd like, would like, need,"
        " make it",
        "also": "also, another, second, as well, plus, other, further, additional, extra, a"
        " matching, matching, third, and a, and one, one more",
        "about": "about, roughly, approx, approximately, around, circa, ca, or so, ish, give or"
        " take, nearly, some, say",
        "middle": "middle, centre, center, centres, centers, mid point, midpoint, ctr, c/l, mid",
        "centred": "centred, centered, central, centrally, dead centre, dead center, in the centre,"
        " in the center, in the exact centre, in the exact center, in the middle, in the exact"
        " middle, the very middle, very middle, very centre, very center,"
        " exactly in the middle, exact centre, exact center, dead central, bang in the"
        " middle, through the centre, through the center, through the middle, halfway, half way, halfway along, half way along, right in the middle, smack in the middle, exactly central,"
        " in the dead centre, in centre, in middle, mid way, midway, center it, centre it"
        ", slap bang"
        " in the middle, centring, in its centre, in its center, in its middle",
        "behind": "middle of the sink, centre of the sink, center of the sink, middle of the basin, centre of the basin, center of the basin, middle of the bowl, centre of the bowl, center of the bowl, behind, in line with, same centre line, same center line, on its centre line,"
        " on its center line, on the same centre line, on the same center line, in line, centre"
        " line, center line, centreline, centerline, on the centreline of, lined up with, same line"
        " as, aligned with, same line, on the same line",
        "sideways": "either side, to either side, each side of it, both sides of it",
        "both": "both, each, all, both of them, all of them, all three",
        "shown": "undermount, undermounted, under mount, under-mount, under mounted, set under,"
        " goes underneath, sits underneath, mounted from under, from under,"
        " fixed from beneath, fixed from below, mounted under, under mounting, fully under, from"
        " beneath, from underneath, sits under, undermounting, under the concrete, under the top,"
        " under the slab, under-mounted, under counter, undercounter, hangs under",
        "covered": "inset, drop in, drop-in, dropin, sit on, sit-on, sits on, overmount"
        ", over mount,"
        " top mount, topmount, top-mount, top mounted, surface mounted, lies on top, lay on,"
        " sits on top, rim sits on, drops in, hides its own edge, edge of the hole is hidden,"
        " hangs from its rim, self rimming, self-rimming, countertop basin, on top of it, lay-on,"
        " standing on, rests on its rim, lies on, stands on it, sit on top, sitting on top, inset"
        " type, glass sits on, drop-ins, hides the edge, covers the edge, flange covers,"
        " dropped in, from above, let in, with a lip, sits in, set on top, built in,"
        " hangs over, rim sits over, sits over, goes on top",
        "round": "round, circular, circle, disc, oval",
        "lshape": "l shaped, l shape, l-shaped, l-shape, lshape, an l, it's an l, it’s an l, l"
        " worktop, shape of an l, l counter, l-top, corner worktop, l top",
        "pieces": "in two pieces, in two halves, two pieces the same, in 2 pieces"
        ", two equal pieces,"
        " two equal halves, in two equal",
        "price": "price, prices, quote, quotation, cost, costs, estimate, how much, pricing"
        ", charge,"
        " ballpark, budget",
        "want": "want, would like, i'd like, we'd like, i’d like, we’d like, looking for, need,"
        " after, interested in, could you make, can you make, could you do, please make, order, to"
        " price, please quote, require, wanting",
    }
)
NUMBERS: Final = MappingProxyType(
    {
        word: value
        for value, word in enumerate(
            [
                "zero",
                "one",
                "two",
                "three",
                "four",
                "five",
                "six",
                "seven",
                "eight",
                "nine",
                "ten",
                "eleven",
                "twelve",
                "thirteen",
                "fourteen",
                "fifteen",
                "sixteen",
                "seventeen",
                "eighteen",
                "nineteen",
            ]
        )
    }
    | {
        word: 10 * tens
        for tens, word in enumerate(
            ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], start=2
        )
    }
    | {"a": 1, "an": 1, "half": 0.5}
)

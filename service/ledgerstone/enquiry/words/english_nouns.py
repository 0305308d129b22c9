"""English nouns of enquiries, by what they name. Each line is a list, parted by commas."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

NOUNS: Final = MappingProxyType(
    {
        "idiom:": "waste disposal, waste disposer, waste disposal unit, food waste,"
        " wall to wall, back to back, wall mounted, wall hung, floor to ceiling",
        "slab:worktop": "worktop, work top, worktops, work tops, wktop, wktp, worksurface, work"
        " surface, countertop, counter top, countertops, counter tops, counter, counters, kitchen"
        " top, kitchen worktop, kitchen plate, kitchen counter, laundry counter, vanity top,"
        " vanity tops, vanity, vanity unit top, vanity counter, basin top, basin tops, washbasin"
        " top, sink top, straight run, single run, sink run,"
        " hob run, range run, cooker run, fridge run, oven run, tap run,"
        " wall run, washstand top, washstand, bathroom top, island top,"
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
        " backsplashes, back splash, sidesplash, sidesplashes, side splash",
        "slab:end-panel": "end panel, end panels, waterfall panel, gable panel, side panel",
        "slab:bench": "bench, benches, bench seat, bench seats, garden bench, seat slab, bench"
        " slab, seat, garden seat, sitting bench",
        "slab:": "infill piece, filler piece, infill, long bit, short bit, main bit, big bit,"
        " small bit, other bit, left bit,"
        " right bit, left-hand bit, right-hand bit, first bit, second bit,"
        " first run, second run, third run, other run, opposite run, sink surround,"
        " basin surround, run along the wall,"
        " shower tray, shower trays, shower base, bath surround, tub surround, bath"
        " panel, slip, slips, jamb, jambs, left run, right run, left-hand run, right-hand run,"
        " left hand run,"
        " right hand run,"
        " doorstep, door step, front step, entrance step, stair tread, tread,"
        " threshold, lid, slab, slabs, top, tops,"
        " concrete plate, cover slab, plate, coping",
        "open:sink": "bowl undermount, half bowl, double bowl, single bowl, twin bowl, bowl sink,"
        " bowl and a"
        " half, sink, sinks, belfast, belfast sink, butler sink, kitchen sink, sink bowl,"
        " sink unit cut out, inset sink, evier, évier, fregadero",
        "open:basin": "basin, basins, washbasin, wash basin, washbasins, hand basin, bowl, bowls,"
        " vessel sink, vessel sinks, vessel basin, vessel bowl, counter-top bowl, countertop bowl,"
        " vanity basin, vessel, washbowl, vanity bowl, lavabo, lavandino, vasque",
        "open:hob": "cooker top, stove top, hob, hobs, cooktop, cook top, cooktops, cooking field,"
        " induction hob, gas"
        " hob, ceramic hob, induction cooktop, induction, gas ring, gas cooktop, cooking plate,"
        " rangetop, teppanyaki",
        "open:tap": "spigot, pot filler hole, swan neck tap, lab tap, tap, taps, faucet,"
        " faucets, mixer, mixer tap, tap holes, pillar tap,"
        " robinet, rubinetto, grifo, mitigeur,"
        " battery, batteries, mixing battery, water battery, sink battery, basin battery,"
        " monobloc, spout, water tap, taphole, tapholes, mixer taps",
        "open:waste": "waste, wastes, waste pipe, waste outlet, plug hole, plughole",
        "open:drain": "drain, drains, drainage",
        "open:parasol": "parasol, sun umbrella, brolly, parasols, umbrella, sunshade, parasol pole",
        "open:cable": "cable, cables, cable grommet, grommet, grommets, wires, cable outlet, cable"
        " tidy, cord, cords, flex, wiring",
        "open:grill": "grill, ceramic grill, barbecue, bbq, kamado, smoker, pizza oven, fire bowl,"
        " fire pit",
        "open:planter": "planter, planters, planting trough, plant pot, herb trough",
        "open:socket": "pop up socket, pop-up socket, pop up, socket tower, pop up sockets",
        "open:soap": "soap pump, soap dispenser, lotion dispenser",
        "open:flue": "flue, flue pipe, chimney pipe, stove pipe, chute, laundry chute",
        "open:bin": "bin, bin chute, compost chute, waste chute, knife slot, knife block",
        "hole:circle": "bore, drilling",
        "hole:": "cut in the slab, cut in the top, cut in the worktop, cut in the concrete, ovals,"
        " hole, holes, cutout, cutouts, cut out, cut outs, cut-out, cut-outs,"
        " c o, c os, cutting for, opening,"
        " openings, aperture, apertures, knockout",
        "hole:slot": "slot, slots",
        "thing:old": "old top, old one, existing one, existing, old slab, old stone, sample",
        "thing:": "base plate, steel plate, metal plate, fixing plate, mounting plate, top plate,"
        " bottom plate, floor plate, wall plate, glass plate, drain pipe, drainpipe,"
        " drain pipes, drainer, draining board,"
        " cable reel, sink unit, sink base, sink cabinet, basin unit, basin cabinet,"
        " hob hood, cooker hood, extractor, sewing machine, glass washer, piece where, space"
        " where, door, doors, doorway, doorways, gate, gates, lane,"
        " passage, passageway,"
        " corridor, gap, ceiling, ceilings, alcove, recess, reveals, reveal, chimney breast,"
        " cabinet, cabinets, unit, units, carcass, carcasses,"
        " carcase, carcases, cupboard, cupboards, base unit, base"
        " units, base, bases, pedestal, pedestals, column, columns, leg, legs, frame, frames, pier,"
        " piers, blockwork,"
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
        " piano, trestles, trestle, supports, support, splash, sideboard, hallway, stone"
        " trough, socket, sockets, outlet, outlets, switch, pot filler, soil pipe, boiler, meter",
        "room:indoors": "hall bath, hall bathroom, half bath, guest bath, master bath,"
        " galley, galley kitchen, primary bath, kids bath, main bath, kitchen, bathroom, living"
        " room, sitting room, lounge,"
        " hall, hallway, utility, utility room, study, office, studio, conservatory, bedroom,"
        " cloakroom, powder room, en suite, ensuite, dining room, laundry, laundry room, pantry,"
        " larder, wc, loo, toilet, landing, porch, playroom, snug, basement, wash room,"
        " washroom, cafe, shop, office kitchen, front room, restaurant",
        "room:wet-room": "wet room, wetroom, wet-room, shower room",
        "room:outdoors": "bbq area, bbq bit, bbq corner, bbq station, bbq island, barbecue area,"
        " barbecue corner, barbecue island, zone of barbecue, grill area, grill island, grill"
        " station, garden, patio, terrace, yard, balcony, deck, outdoor kitchen, pool,"
        " outdoors, outside, outdoor, roof terrace, courtyard, veranda, backyard, porch outside",
        "room:": "room, rooms, hut, house, cottage, shed, potting shed, barn, plot, flat,"
        " apartment,"
        " building, garage, workshop, space, place",
        "leg:back": "along back, along back wall,"
        " along the wall, back run, back leg, long leg, longer leg, long side, longer"
        " side, long part,"
        " long arm, longer run, main run, main leg, back part, part along the back, back section,"
        " long piece, longer piece, main piece, long section, longer section, main section,"
        " long run, longer arm, along the back wall, along the back, wall opposite you, one leg,"
        " first leg, rear run, window run",
        "leg:side": "along left wall, along right wall,"
        " return, left leg, right leg, left-hand leg, right-hand leg, short leg,"
        " shorter leg, side leg, short side, shorter side, short"
        " part, short arm, shorter run, side run, shorter arm, other leg, second leg, short run,"
        " short piece, shorter piece, return piece, side piece, short section, shorter section,"
        " return leg, turns and comes down, comes down that side wall,"
        " comes down the side wall, comes down that wall, comes down that side, turns the corner"
        " and comes, turns and comes, turns and runs, turns forward, runs towards you, runs toward"
        " you, comes forward, comes out, comes towards you, comes toward you, part down the"
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
        "feature:": "chamfer, chamfers, chamfered, bevel, bevels, bevelled, beveled, facet,"
        " facets, facette, faceted, facetted, radius, radii,"
        " radiused, rounded, rounding, roundover, round over, rounded over, arris, eased, drip,"
        " drip groove, groove, bullnose, pencil round, overhang, lip, nosing, tolerance, silicone,"
        " joint, gap each end, clearance, quarter round, fall, mitre, sample tile",
    }
)


PLACES: Final = MappingProxyType(
    {
        "indoors": "hall bath, hall bathroom, half bath, guest bath, master bath, primary bath,"
        " kids bath, main bath, cellar, kitchen, bathroom, living room, sitting room, lounge, hall,"
        " hallway, utility,"
        " utility room, study, office, studio, conservatory, bedroom, cloakroom, powder room, en"
        " suite, ensuite, dining room, laundry, pantry, larder, landing, playroom, snug, basement,"
        " wash room, washroom, cafe, front room, indoors, indoor, restaurant, sun room, sunroom,"
        " boot room, mud room, toilet, downstairs loo, orangery, kitchenette, laundry room",
        "wet-room": "wet room, wetroom, shower room",
        "outdoors": "garden, patio, terrace, yard, balcony, outdoor kitchen, outdoors, outside,"
        " outdoor, roof terrace, courtyard, veranda, backyard, back yard, decking, gazebo, pergola",
    }
)

# The care sheet: how a slab is kept, by its use, its sealer and its place. Common practice, no
# source, where none is named; heat limits and food contact are the sealer's own sheet's.

care-title = Keeping it well
care-every-day = Every day
care-wipe = Wipe it with warm water and a neutral, non-abrasive soap; dry it with a cloth.
care-spills = Wipe up what is spilled: it may mark in minutes.
care-board = Use a board. A knife scratches the sealer, and concrete blunts the knife.
care-never = No descaler, bleach, scouring powder or steel wool.
care-acids = Acids
care-acids-etch = { $food ->
    [yes] Lemon, vinegar, wine, coffee and most descalers etch concrete: a dull pale mark.
   *[no] Vinegar, toilet and tile cleaners and most descalers etch concrete: a dull pale mark.
}
care-acids-rinse = Wipe them up at once and rinse. A mark that has bitten is polished and sealed again.
care-fire = By the fire
care-fire-embers = Embers and hot ash mark it: use a spark guard, and a tray under the tools.
care-fire-ash = Sweep it with a soft brush once all is cold. Ash stays hot for days: carry it in a metal bin with a lid, and stand that outdoors, off the slab.
care-fire-water = Never put water on it while it is warm: the shock can crack it. Let a new one warm slowly, with small fires at first.
care-fire-logs = Set logs and irons down, and let nothing fall on it. Do not stand a log basket on its edge.
care-fire-wipe = Soot and ash with water are alkaline and stain: brush first, then wipe with little water, and dry it.
care-wet = In a wet room
care-wet-dry = Let it dry between uses, with the door or a window open.
care-wet-lime = Wipe off limescale while it is soft; no descaler takes it off without marking the concrete.
care-outdoors = Outdoors, in winter
care-frost-salt = Keep snow and ice off it by hand. Salt and de-icer take the surface off.
care-frost-water = Let no water stand on it: sweep leaves off, keep its fall and its drip clear.
care-frost-cover = Cover it in long frost if it can be covered so that air still moves beneath.
care-frost-fires = Fires, braziers and hot coals stand on their own feet on a mat, never on the concrete.
care-sealer = { HOWMANY($slabs) ->
    [0] The { $sealer } sealer
   *[other] The { $sealer } sealer ({ $slabs })
}
care-heat = { $near ->
    [kitchen] Heat: keep it below { $limit }. A pan from the hob is far hotter, so it stands on a trivet.
    [hearth] Heat: keep it below { $limit }. Nearer the fire than that it dulls or yellows; that is the sealer, and is renewed.
   *[other] Heat: keep it below { $limit }. Nothing hotter stands on it.
}
care-heat-beside = Beside a hot appliance the sealer may yellow; that spot is renewed more often.
care-oil = { $kind ->
    [penetrating] Oil and fat: wipe them up within the hour; they darken what they soak into.
   *[film] Oil and fat: they lie on the film and wipe off; wipe them off before they are hot.
}
care-food = It is not declared for contact with food: prepare food on a board.
care-renew-soaks = When a drop of water no longer beads, at once: as a rule once a year.
care-renew-wipe = Clean it, leave it dry for a day, wipe a thin coat on, wipe all of it off after ten minutes. What is left standing goes sticky.
care-renew-rags = Rags with this oil in them catch fire by themselves: dry them flat outdoors, or drown them in water in a lidded tin.
care-renew-film = When it is scratched through or looks worn, after some years: the old film is keyed or taken off first, which is a workshop's job. Ask us.
care-renew-polish = Until then a polish made for it is enough. Never seal over dirt or damp: it turns white.
care-pot = The repair pot
care-pot-holds = Your pot holds { $masses ->
    [lb] { $oz } oz
   *[kg] { $kg } kg
} of dry powder, your own batch's cement and pigment, without sand: for pin holes and small chips.
care-pot-mix = { $masses ->
    [lb] Stir { $water_oz } oz of water into the whole pot, or a teaspoon of water into { $powder_oz } oz of it: as thick as cream.
   *[kg] Stir { $water_g } g of water into the whole pot, or a teaspoon of water ({ $spoon_g } g) into { $powder_g } g of it: as thick as cream.
} Use it within { $minutes } minutes.
care-pot-skin = Wear gloves and glasses: wet cement burns skin and eyes. Keep it from children.
care-pot-rub = Wet the hole and rub it in, a little proud. Keep it under a damp cloth for { $days } days, rub it flat with fine wet paper, dry it, seal it.
care-pot-keeps = Dry and shut it keeps about { $months } months; when it has lumps, ask us for another.
care-pot-not = Cracks that move, and anything at an edge or a support, are ours to look at: send a picture.

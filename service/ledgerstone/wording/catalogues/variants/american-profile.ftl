# What the profile's form says of a value otherwise in the United States: its own examples, and no
# metric measure where the value is shown in another one.

Identity =
    .country = two letters of your country, for holidays and ZIP codes: US
    .region = two letters of your state, for its holidays: WA, TX, NY; left out, federal holidays alone
    .timezone = your clock, by continent and city: America/Chicago
    .currency = three letters of your currency: USD
    .telephone = phone number that customers call
    .reached = when you can be reached, as customers read it: Monday to Friday, 8 to 5

DeliveryArea =
    .pallet = price of a pallet, to the curb; left out: you ship none
    .own_van = price of your own truck or trailer, to the door; left out: none goes
    .postcodes = beginnings of its ZIP codes, or a range of them: 98, 988, 98001-98499

Offer =
    .payment = how a deposit is paid, as customers read it: by check or card
    .balance_due = when the balance is due: before it leaves the shop

Recipe =
    .fck_mpa = strength of the concrete at 28 days, as the bag or your mix design says
    .largest_aggregate_mm = largest size of its gravel
    .cement_class = how fast the cement hardens: N is ordinary Type I/II, R is high-early Type III, S is slow
    .constituents = recipe by volume: what a cubic yard is made of

Constituent =
    .kg_per_m3 = weight by volume placed; aggregate saturated and surface-dry

Bag =
    .yield_l = concrete placed from one bag, as the bag says: 0.6 ft³ is usual of 80 lb

SlurryRule =
    .cement_price_per_kg = price of portland cement for slurry, where you mix from bags
    .cement_pack_kg = a bag of portland cement for slurry, where you mix from bags
    .amounts = amounts by surface

SlurryFor =
    .l_per_m2 = slurry by area, all passes together

Boards =
    .release_m2_per_l = area that release agent covers

Sealer =
    .coverage_m2_per_l = area covered in one coat

Hours =
    .per_pour = what is mixed and placed together, shared by volume

MouldHours =
    .side_per_m = side strips, by length of outline
    .drop_per_m = build a drop edge, by its length
    .bead_per_m = run the bead, by length of outline

Rates =
    .hour = an hour of one person, before your markup
    .machine_hour = an hour of your mixer or polisher: power and wear
    .steel_kg_per_m2 = weight of steel by area of slab
    .recast_percent_per_m2 = more that are cast twice, by area of a piece beyond 10 3/4 ft²

PackingSettings =
    .collected = the customer picks it up
    .own_van = our own truck or trailer brings it, to the door or to be installed

Services =
    .cover_percent = insurance while a carrier has it, of its value
    .cover_least = least that the insurance costs

Sample =
    .litres = concrete in a tile

BrokenStrip =
    .load_n = load that broke it, hung at the middle

Way =
    .price = rent of the gear for this way

Tax =
    .registered = whether you charge sales tax
    .percent = sales tax on slabs and their delivery, and on what is picked up

Rails =
    .steel = next rail that is installed: steel
  .hardwood = first rail that is installed: hardwood
  .panel_n_per_mm2 = how a side panel gives, pounds for each inch of its length and inch that it sinks: particleboard 3/4 × 28 in, from memory

Conventions =
    .words = whose English words

WordChoice =
    .here = the word that is said in its place: bench top

ConcreteSettings =
    .untested_percent = share of the strength of its class that is trusted untested: less than 100 for bagged, fiber or heavily pigmented mixes
    .partial_factor = what the strength of concrete is divided by, for safety
    .accidental_factor = what the strength of concrete is divided by, for accidents

Steel =
    .yield_mpa = yield strength: 60 ksi is usual of plain rebar, 75 of stainless
    .e_mpa = how stiff it is; left out: 29,000 ksi of steel, 6,500 of glass fiber (from memory)
    .cover_mm = least concrete over it

Bench =
    .damp_days = days of damp cover from the pour; left out: by how warm it is, from memory

Mixer =
    .working_l = concrete from one batch of your mixer

Calendar =
    .hands = people at work

Lifting =
    .kg_per_person = what one person lifts of a slab; customers read it beside each weight
    .most_people = most people at one slab
    .tail_lift_kg = most that the carrier's liftgate takes

Van =
    .most_kg = payload of your truck or trailer
    .length_mm = longest piece that fits in your truck or on your trailer

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
    .postcodes = beginnings of its ZIP codes, or a range of them: 98, 988, 98001-98499

Offer =
    .payment = how a deposit is paid, as customers read it: by check or card
    .balance_due = when the balance is due: before it leaves the shop

Recipe =
    .constituents = recipe by volume: what a cubic yard is made of

Constituent =
    .kg_per_m3 = weight by volume placed; aggregate saturated and surface-dry

Bag =
    .yield_l = concrete placed from one bag, as the bag says: 0.6 ft³ is usual of 80 lb

SlurryRule =
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
    .steel_kg_per_m2 = weight of steel by area of slab
    .recast_percent_per_m2 = more that are cast twice, by area of a piece beyond 10 3/4 ft²

PackingSettings =
    .collected = the customer picks it up

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
  .hardwood = first rail that is installed: hardwood, as stiff as stands here
  .panel_n_per_mm2 = how a side panel gives, pounds for each inch of its length and inch that it sinks: particleboard 3/4 × 28 in, from memory

Conventions =
    .words = whose English words

WordChoice =
    .here = the word that is said in its place: bench top

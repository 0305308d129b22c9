# Sentences of the service in the United States where exchanged words do not do.

fitting-gas = Gas, where there is any: a licensed plumber or gas fitter connects and tests it, and says what clearances and vents it needs.
fitting-electrics = Electrical work, and anything electrical near water: a licensed electrician.

# Sentences of the service in the United States where exchanged words do not do.

job-masses = No weight here is a safe limit: look at each lift before it is made.
price-cover = Shipping insurance
fitting-gas = Gas, where there is any: a licensed plumber or gas fitter connects and tests it, and says what clearances and vents it needs.
fitting-electrics = Electrical work, and anything electrical near water: a licensed electrician.
fault-no-rate = who charges sales tax has a rate. Write it, or registered = false.
fitting-title = Receiving and installing
fitting-ring = Call us the same day. Do not install a slab that you would not keep.
fitting-until = Until it is installed, keep it on edge, leaning a little, dry, and tied back.

piece-name = { $piece ->
    [basin] bathroom sink
    [sink] kitchen sink
    [tap] faucet
    [hob] cooktop
    [appliance] appliance
    [round] round opening
    [rectangle] rectangle
    [slot] slot
    [drainer] drainboard
    [recess] recess
   *[rebate] rabbet
}

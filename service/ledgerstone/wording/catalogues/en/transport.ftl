# What a slab weighs, and the hands it wants.

lift-by-one = { $weight }: one person lifts it
lift-by-two = { $weight }: two people, with carry clamps or a trolley
lift-by-several = { $weight }: { $people } and a trolley
lift-by-gear = { $weight }: a trolley or lifting gear, never hands alone

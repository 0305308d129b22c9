# Was eine Platte wiegt und wie viele Hände sie braucht.

lift-by-one = { $weight }: eine Person hebt sie
lift-by-two = { $weight }: zwei Personen, mit Tragklemmen oder einem Wagen
lift-by-several = { $weight }: { $people } und ein Wagen
lift-by-gear = { $weight }: mit Wagen oder Hebezeug, nie von Hand allein

# Worauf Preis und Termin beruhen, und was ein Kostenvoranschlag oder ein Angebot ist.

trial = Dies ist ein Probelauf: { NAME($what, start: "yes") } stehen noch nicht fest; es ist also kein Angebot.
trial-headed = Probelauf: { $title }
trial-what = { $what ->
    [prices] unsere Preise
    [hours] unsere Arbeitsstunden
    [days] unsere Arbeitstage
    [areas] unsere Liefergebiete
    [lifts] das, was wir heben können,
   *[shades] unsere Farbtöne
}
day-is-for = { $wanted ->
    [deposit-and-templates] Der Termin gilt für eine Bestellung bis zum { $by }, wenn dann die Anzahlung von { $deposit } geleistet ist und die Schablonen hier sind. Fest ist er, sobald wir ihn eingetragen haben.
    [deposit] Der Termin gilt für eine Bestellung bis zum { $by }, wenn dann die Anzahlung von { $deposit } geleistet ist. Fest ist er, sobald wir ihn eingetragen haben.
    [templates] Der Termin gilt für eine Bestellung bis zum { $by }, wenn dann die Schablonen hier sind. Fest ist er, sobald wir ihn eingetragen haben.
   *[nothing] Der Termin gilt für eine Bestellung bis zum { $by }. Fest ist er, sobald wir ihn eingetragen haben.
}
estimate-until-measured = Dies ist ein Kostenvoranschlag, bis wir bei Ihnen gemessen haben, überall in unserem Liefergebiet.
estimate-until-templates = Dies ist ein Kostenvoranschlag, bis die Schablonen hier und vermessen sind.
estimate-best-guess = Dies ist ein Kostenvoranschlag, unsere beste Schätzung: Wir prüfen ihn und nennen Ihnen dann einen festen Preis.
quotation-fixed = Dies ist ein Angebot: Der Preis gilt fest bis zum { $until }, für die Bestellung, wie sie hier steht.
sample-first = Es wird nichts zugeschnitten, bevor Sie eine Musterplatte freigegeben haben.
strip-first = Junger Beton wird erst ausgeschalt, wenn ein Probestreifen davon gehalten hat.
solid-base-before = Lassen Sie vor dem Einbau vollflächig unter { NAME($slabs, case: "dative") } einen Unterbau herstellen, der sich nicht durchbiegt, etwa aus Mauerwerk: Er ist nicht im Preis. Ein Brett auf Schränken biegt sich mit ihnen durch und genügt nicht.
you-collect = Sie holen die Bestellung in der Werkstatt ab.
# Richtlinie 2011/83/EU Artikel 16 Buchstabe c; in der Schweiz OR Artikel 40a und 197, aus dem Gedächtnis.
made-to-measure-no-return = Nach Ihren Maßen gefertigt: keine Rückgabe bei Nichtgefallen; Ihre Rechte bei Mängeln bleiben.
made-to-measure = { $country ->
    [DE] Es wird nach Ihren Maßen gefertigt: Ein Widerrufsrecht besteht dafür nicht (§ 312g Abs. 2 Nr. 1 BGB). Ihre Rechte bei Mängeln bleiben Ihnen.
    [AT] Es wird nach Ihren Maßen gefertigt: Ein Rücktrittsrecht besteht dafür nicht (§ 18 Abs. 1 Z 3 FAGG). Ihre Rechte bei Mängeln bleiben Ihnen.
    [GB] { made-to-measure-no-return }
    [IE] { made-to-measure-no-return }
    [BE] { made-to-measure-no-return }
    [NL] { made-to-measure-no-return }
    [FR] { made-to-measure-no-return }
    [IT] { made-to-measure-no-return }
    [ES] { made-to-measure-no-return }
    [PT] { made-to-measure-no-return }
    [DK] { made-to-measure-no-return }
    [SE] { made-to-measure-no-return }
    [NO] { made-to-measure-no-return }
    [FI] { made-to-measure-no-return }
    [PL] { made-to-measure-no-return }
    [CZ] { made-to-measure-no-return }
    [LU] { made-to-measure-no-return }
    [LI] { made-to-measure-no-return }
    [CH] { made-to-measure-no-return }
    [AU] { made-to-measure-no-return }
    [NZ] { made-to-measure-no-return }
    [US] Es wird nach Ihren Maßen gefertigt. Vereinbaren Sie vor der Bestellung mit uns, was gilt, wenn Sie es sich anders überlegen; Ihre Rechte bei Mängeln bleiben Ihnen.
   *[other] Es wird nach Ihren Maßen gefertigt. Ob eine Bestellung nach dem Guss widerrufen werden kann, richtet sich nach dem Recht bei Ihnen; Ihre Rechte bei Mängeln bleiben Ihnen.
}
no-tax-charged = { $country ->
    [DE] Als Kleinunternehmer im Sinne von § 19 UStG berechnen wir keine Umsatzsteuer.
    [AT] Als Kleinunternehmer im Sinne von § 6 Abs. 1 Z 27 UStG berechnen wir keine Umsatzsteuer.
   *[other] { $tax } wird nicht berechnet.
}
calendar-not-read = Wir konnten nicht in unseren Kalender sehen; der Termin ist deshalb eine Schätzung, die wir noch bestätigen.
calendar-not-read-because = Wir konnten nicht in unseren Kalender sehen; der Termin ist deshalb eine Schätzung, die wir noch bestätigen. { $why }

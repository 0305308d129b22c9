# What is wrong in a workshop's file. The key that it is about stands before each sentence.

fault-nearest = { $near ->
    [guess] { " " }Perhaps "{ $guess }" was meant.
    [known] { " " }Known here: { $known }.
   *[none] { "" }
}

# The file itself.
fault-not-utf8 = a character here is not UTF-8. Save the file with the encoding UTF-8.
fault-folder = this is a folder. Name the profile's own file.
fault-no-file = there is no such file. Check its name and folder.
fault-unreadable = the file cannot be read: { $reason }.
fault-too-large = the file is larger than 1 MB, which no profile is.

# How it is written.
fault-writing = { $fault ->
    [twice] this stands twice. Write each key and each [table] once; a list's items take [[ ]].
    [open] what begins here has no end: a value, a bracket or a quotation mark is missing.
    [quotes] a text here does not end: put the same quotation mark at both ends, on one line.
    [unprinted] a character here does not print, or does not belong. Take it out.
    [backslash] write a backslash twice, or the text between single quotation marks.
    [statement] this line is no [table], key = value or # comment.
    [equals] a key needs = and its value after it, on the same line.
    [line] more stands here than one key = value. Write one to a line.
    [value] this value cannot be read. Text needs quotation marks; numbers none.
    [date] there is no such day.
    [key] a key is written in letters, digits, - and _.
    [bracket] a [table] needs its closing bracket.
    [brackets] a [[table]] needs both its closing brackets.
    [deep] lists or tables stand too deep inside one another.
    [long] a number here is too long to read.
   *[other] this is not TOML.
}
fault-write-day = Write the day as { $day }.
fault-write-year = Write the day with its year, like 2027-{ $day }.
fault-write-text = Write "{ $text }", in quotation marks.
fault-write-point = Write { $number }: a point separates decimals.
fault-write-number = Write { $number }, the number alone.

# One value.
fault-unfit = this is { fault-wanted }; here stands { fault-found }.{ $quoted ->
    [yes] { " " }Take the quotation marks off.
   *[no] { "" }
}
fault-wanted = { $wanted ->
    [text] a text in quotation marks
    [flag] true or false, without quotation marks
    [day] a day without quotation marks, like 2027-03-25
    [whole] a whole number, like 3
    [length] a length in { $lengths ->
        [in] inches, or with its unit, like 10 ft 2 in
       *[mm] mm, or with its unit, like 1.2 m
    }
    [percent] a percentage, like 12.5
    [hours] a time in hours, or with its unit, like 45 min
    [rate] a time in{ $unit }, like 0.3
    [days] a number of days, like 2
    [density] a density in{ $unit }, or with its unit, like { $masses ->
        [lb] 150 lb/cu ft
       *[kg] 2400 kg/m³
    }
    [spread] a mass by area in{ $unit }, or with its unit, like { $masses ->
        [lb] 0.45 lb/sq ft
       *[kg] 2.5 kg/m²
    }
    [mass] a mass in{ $unit }, or with its unit, like { $masses ->
        [lb] 94 lb
       *[kg] 25 kg
    }
    [stress] a strength in{ $unit }, or with its unit, like { $strengths ->
        [psi] 5800 psi
        [MPa] 40 MPa
       *[newtons] 40 N/mm²
    }
    [warmth] a temperature in{ $unit }, or with its unit, like { $temperatures ->
        [F] 140 °F
       *[C] 60 °C
    }
    [yield] an area in{ $unit }, or with its unit, like { $volumes ->
        [gal] 370 sq ft per gal
       *[l] 10 m² per l
    }
    [money] an amount of money, like 12.50{ $unit }
    [table] a table
    [list] a list in square brackets
   *[number] a number, like 1.5{ $unit }
}
fault-found = { $found ->
    [yes] true
    [no] false
    [text] the text "{ $text }"
    [list] a list
    [table] a table
    [day] the date { $text }
    [number] the number { $text }
   *[time] a time of day
}
# On the form nothing stands in quotation marks or brackets, and words stand for true and false.
form-unfit = this is { form-wanted }; here stands { form-found }.
form-wanted = { $wanted ->
    [text] a text
    [flag] yes or no
    [day] a day, like 2027-03-25
    [table] a table
    [list] a list
   *[other] { fault-wanted }
}
form-found = { $found ->
    [yes] yes
    [no] no
    [text] “{ $text }”
   *[other] { fault-found }
}
form-choice = choose one of { $options }; here stands { form-found }.
fault-long-number = too long to print
fault-empty = this is empty. Write { $about }.
fault-too-long = this has { $count } characters; it holds { $longest }.
fault-unprintable = this holds a character that does not print. Write it on one line.
fault-decimals = this has { $count } decimals; write at most { $most }.
fault-bound = this is { $value }; { $bound ->
    [finite] write a number up to { $limit }.
    [above] it needs to be above { $limit }.
    [least] it needs at least { $limit }.
   *[most] it can be { $limit } at most.
}
fault-choice = this is one of { $options }; here stands { fault-found }.{ fault-nearest }
fault-no-key = there is no such key.{ fault-nearest }
fault-one-table = this is one table: write its name in single brackets, once.
fault-list-of-tables = this is a list of tables: write its name in double brackets.
fault-list-count = this is a list of { $count }; here stand { $here }.
fault-table-missing = the table { $table } is missing: { $about }.
fault-key-missing = this key is missing: { $about }.
fault-no-word = this table has no such key.{ fault-nearest }
fault-standing-word = Write "yours", "usual" or "invented" here.

# Values that do not agree with one another.
fault-at-least-one = write at least one { $thing ->
    [shade] shade
    [surface] surface
    [sealer] sealer
    [edge] edge profile
    [strip] [[shaping.strips]]
   *[way] [[handling.ways]]
}.
fault-twice-in = "{ $name }" stands twice in { $table }. Each stands once.
fault-twice = "{ $name }" stands twice.
fault-shorter-side = this is the shorter side; it is longer than { $key }.
fault-more-than = this is more than { $key }.
fault-more-than-table = this is more than the table's width_mm.
fault-thickness-missing = name at least one thickness.
fault-thickness-order = write each thickness once, the thinnest first.
fault-thickness-between = { $size } does not lie between thinnest_mm, { $least }, and thickest_mm, { $most }.
fault-caution-under-stop = this is { $cautions }; it needs at least stops_mm, { $stops }.
fault-colour = this is # and six digits or letters a-f, like #5b5d5a.
fault-doses = the doses come to { $total }; they can be { $most } at most.
fault-no-pigment = no [[pigments]] is named "{ $name }".{ fault-nearest }
fault-pigment-twice = "{ $name }" stands twice in this shade. Write one dose.
fault-not-fast = { $name } does not last in cement, which is alkaline. Use a mineral oxide: cobalt blue for blue, chromium oxide for green.
fault-carbon = carbon black has a limit of its own. Write kind = "carbon".
fault-cement-twice = { $cement } stands twice. Each cement stands once.
fault-no-base = no [[shade.bases]] tells the colour of { $cement } cement alone.
fault-no-samples = matching needs tiles that were read. Add samples to your pigments, or write false.
fault-no-place = name at least one place where it may be used.
fault-months = write twelve temperatures, January to December; here stand { $months }.
fault-cover-days = this is less than under_cover in [days], { $days }.
fault-mesh = this is no more than the wire, mesh_wire_mm.
fault-bar-price = write what a bar costs, or leave bar_mm out: no bars are kept.
fault-no-recipe = write the parts of a cubic metre as [[recipe.constituents]], or [recipe.bag].
fault-two-recipes = here stand [[recipe.constituents]] too. Keep the kind that is mixed here.
fault-no-role = no part has the role "{ $role }". Write it too.
fault-water-twice = water stands twice. Write it once.
fault-part-twice = "{ $name }" stands twice. Each part stands once.
fault-density = { $role } has { $least } to { $most }; here stands { $here }.
fault-not-closed = with { $air } air the parts fill { $fill } of the concrete, and not { $whole }. { $stone ->
    [none] Take a smaller part of everything.
   *[some] It closes with { $closes }.
}
fault-part-of = { $name } { $mass }
fault-yield = { $given ->
    [both] yield_l (how much a bag makes) and fresh_kg_per_m3 (how heavy it is when fresh) both stand here. Write only one: the other follows from it.
   *[none] write either yield_l (how much a bag makes) or fresh_kg_per_m3 (how heavy it is when fresh): the other follows from it.
}
fault-bag-density = { $bag } and { $water } of water in { $litres } weigh { $density }; concrete weighs { $least } to { $most }.
fault-ratio = water over cement comes to { $ratio }; it is { $least } to { $most }.
fault-face-wetter = the face coat is the wetter one: it needs at least the backing's { $ratio }.
fault-weighs = the parts weigh { $fresh }; concrete weighs { $least } to { $most }.
fault-weighed = this is { $weighed }; fresh it weighs { $fresh }, and { $dry } if it lost all its water. Weigh a slab again, or leave this out.
fault-wet-heaps = the heaps hold { $held } of free water; the recipe has { $water }.
fault-bag-mixer = a whole bag makes { $makes }; the mixer takes { $takes }.
fault-face-thick = this is no less than the thinnest slab, { $thinnest }.
fault-no-aggregate = "{ $name }" is no aggregate of the recipe.{ fault-nearest }
fault-nothing-left = nothing but cement would be left: keep the sand.
fault-open-time = this is less than one batch takes, { $minutes } minutes.
fault-coarse-scale = this is coarser than scale_step_kg.
fault-no-slurry = no amount is for the surface "{ $surface }". Write 0 where none is used.
fault-saw = the saw takes { $kerf } of a sheet { $side } wide. Measure it again.
fault-midnight = hands that begin at { $starts } and work { $hours } hours would work past midnight. Begin earlier.
fault-too-cold = no month reaches { $coldest }, so no damp cover would ever end. Heat the shed, or write damp_days in [bench].
fault-tent-slow = this is no less than under_cover in [days], { $days }: it saves nothing.
fault-tent-cold = the shed itself reaches { $warmest }. Write what the tent holds above that.
fault-short-word = "{ $word }" begins too many words. Write { $letters } letters or more.
fault-holds-nothing = no entry would hold anything. Name a word, or write others_hold_people = true.
fault-not-ics = "{ $file }" is not an iCalendar file by its name. Export it as .ics.
fault-country = no public holidays are known for "{ $land }". Write two letters, like GB.{ fault-nearest }
fault-region = "{ $region }" is { $land ->
    [US] no state of the United States
   *[other] not a region of { $land }
}.{ $near ->
    [guess] { " " }Perhaps "{ $guess }" was meant.
   *[known] { "" }
} Known here: { $known }.
fault-clock = "{ $zone }" is no time zone known here. Write it like Europe/London.{ fault-nearest }
fault-currency = this is three capital letters, like GBP.
fault-email = this is one email address, like hello@example.com.
fault-factor = { $factor } would add next to nothing. For a cost times that much write { $meant }; if it is meant so, write { $factor } with its sign.
fault-no-rate = a registered workshop has a rate. Write it, or registered = false.
fault-tax-by-place = where the tax hangs on the place, write shown = "before-tax" in [tax].
fault-area-free = this area has no price. Write pallet, own_van or { "fitted" }.
fault-no-postcode = name at least one beginning of a postcode.
fault-postcode = "{ $beginning }" is not like { $like }.
fault-postcode-taken = "{ $beginning }" already belongs to the area "{ $area }".
fault-pattern = this is no regular expression: look at its character { $at }.
fault-pattern-brackets = put what areas begin with in brackets: ([0-9]+).
fault-no-weekday = name at least one day on which hands work.
fault-closure = this is { $last }, before the first day, { $first }.
fault-month-day = this is a month and a day, { $known ->
    [yes] here { $day }
   *[no] like 08-15
}.
fault-holiday = no public holiday here is called "{ $name }".{ fault-nearest }
fault-address = this is a web address, like https://slabs.example.com.
fault-origin = this is a site without a path, like https://www.example.com.
fault-server = this is a server's name alone, like { $like }.
fault-secret = a password is only sent in secret. { $box ->
    [mail] Write starttls or tls, or leave user out.
   *[mailbox] Write tls or starttls.
}

# The maker's own sentences and templates.
fault-own-not-utf8 = this cannot be read as UTF-8 text.
fault-own-too-long = this is longer than { $most } characters.
fault-own-no-sentence = this is no sentence. Write it as: name = The sentence.
fault-own-no-term = there is no term { $name } to put another in the place of.
fault-own-unknown = there is no sentence { $name }.
fault-own-empty = { $name } has no text.
fault-own-value = { $name } is not given { $value }. Its values are: { $given }.
fault-own-no-values = { $name } is not given { $value }, nor any other value.
fault-own-function = { $name } asks for { $function }, which there is not.
fault-own-reference = { $name } asks for the sentence { $other }, which there is not.
fault-own-page-unsaid = the page says no { $name }.
fault-own-page = { $name } { $why ->
    [twice] stands twice.
    [unread] is no sentence.
    [text] has a text of its own. Write it as an attribute: .name = The sentence.
    [chooses] chooses by something other than { $counted }.
    [number] tells numbers apart. Write [one] and [other].
    [other] has no [other].
   *[holds] holds something other than text and values.
}
fault-template-unread = the template does not read: { $reason }
fault-template-deep = the template holds things in one another too deep to be read.
fault-template-may-not = a template here may not use “{ $what }”.
fault-template-loop = a loop goes over what is given, and three deep at most.
fault-template-hidden = names that begin with _ are not given.

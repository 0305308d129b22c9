"""Recurring entries: the worked examples of RFC 5545 §3.8.5.3 with the days that it prints."""

# The first day, the rule, and the days as printed, by month; … where the RFC goes on.
EXAMPLES = {
    "daily for 10": ("19970902", "DAILY;COUNT=10", "1997-9: 2-11"),
    "daily until 24 December": ("19970902", "DAILY;UNTIL=19971224T000000Z",
        "1997-9: 2-30; 1997-10: 1-31; 1997-11: 1-30; 1997-12: 1-23"),
    "every other day": ("19970902", "DAILY;INTERVAL=2",
        ("1997-9: 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30;"
        "1997-10: 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30;"
        "1997-11: 1,3,5,7,9,11,13,15,17,19,21,23,25,27,29; 1997-12: 1,3…")),
    "every 10 days": ("19970902", "DAILY;INTERVAL=10;COUNT=5", "1997-9: 2,12,22; 1997-10: 2,12"),
    "January, by years": ("19980101",
        "YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA",
        "1998-1: 1-31; 1999-1: 1-31; 2000-1: 1-31"),
    "January, by days": ("19980101", "DAILY;UNTIL=20000131T140000Z;BYMONTH=1",
        "1998-1: 1-31; 1999-1: 1-31; 2000-1: 1-31"),
    "weekly for 10": ("19970902", "WEEKLY;COUNT=10",
        "1997-9: 2,9,16,23,30; 1997-10: 7,14,21,28; 1997-11: 4"),
    "weekly until 24 December": ("19970902", "WEEKLY;UNTIL=19971224T000000Z",
        "1997-9: 2,9,16,23,30; 1997-10: 7,14,21,28; 1997-11: 4,11,18,25; 1997-12: 2,9,16,23"),
    "every other week": ("19970902", "WEEKLY;INTERVAL=2;WKST=SU",
        ("1997-9: 2,16,30; 1997-10: 14,28; 1997-11: 11,25; 1997-12: 9,23; 1998-1: 6,20;"
        "1998-2: 3,17…")),
    "five weeks, until": ("19970902", "WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH",
        "1997-9: 2,4,9,11,16,18,23,25,30; 1997-10: 2"),
    "five weeks, counted": ("19970902", "WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH",
        "1997-9: 2,4,9,11,16,18,23,25,30; 1997-10: 2"),
    "every other week, three days": ("19970901",
        "WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
        ("1997-9: 1,3,5,15,17,19,29; 1997-10: 1,3,13,15,17,27,29,31;"
        "1997-11: 10,12,14,24,26,28; 1997-12: 8,10,12,22")),
    "every other week, two days": ("19970902", "WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
        "1997-9: 2,4,16,18,30; 1997-10: 2,14,16"),
    "first Fridays for 10": ("19970905", "MONTHLY;COUNT=10;BYDAY=1FR",
        ("1997-9: 5; 1997-10: 3; 1997-11: 7; 1997-12: 5; 1998-1: 2; 1998-2: 6; 1998-3: 6;"
        "1998-4: 3; 1998-5: 1; 1998-6: 5")),
    "first Fridays until": ("19970905", "MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR",
        "1997-9: 5; 1997-10: 3; 1997-11: 7; 1997-12: 5"),
    "first and last Sundays": ("19970907", "MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
        "1997-9: 7,28; 1997-11: 2,30; 1998-1: 4,25; 1998-3: 1,29; 1998-5: 3,31"),
    "last Mondays but one": ("19970922", "MONTHLY;COUNT=6;BYDAY=-2MO",
        "1997-9: 22; 1997-10: 20; 1997-11: 17; 1997-12: 22; 1998-1: 19; 1998-2: 16"),
    "third day from the end": ("19970928", "MONTHLY;BYMONTHDAY=-3",
        "1997-9: 28; 1997-10: 29; 1997-11: 28; 1997-12: 29; 1998-1: 29; 1998-2: 26…"),
    "2nd and 15th": ("19970902", "MONTHLY;COUNT=10;BYMONTHDAY=2,15",
        "1997-9: 2,15; 1997-10: 2,15; 1997-11: 2,15; 1997-12: 2,15; 1998-1: 2,15"),
    "first and last days": ("19970930", "MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
        "1997-9: 30; 1997-10: 1,31; 1997-11: 1,30; 1997-12: 1,31; 1998-1: 1,31; 1998-2: 1"),
    "every 18 months": ("19970910", "MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15",
        "1997-9: 10-15; 1999-3: 10-13"),
    "Tuesdays of every other month": ("19970902", "MONTHLY;INTERVAL=2;BYDAY=TU",
        ("1997-9: 2,9,16,23,30; 1997-11: 4,11,18,25; 1998-1: 6,13,20,27;"
        "1998-3: 3,10,17,24,31…")),
    "June and July": ("19970610", "YEARLY;COUNT=10;BYMONTH=6,7",
        ("1997-6: 10; 1997-7: 10; 1998-6: 10; 1998-7: 10; 1999-6: 10; 1999-7: 10; 2000-6: 10;"
        "2000-7: 10; 2001-6: 10; 2001-7: 10")),
    "every other year, three months": ("19970310", "YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3",
        ("1997-3: 10; 1999-1: 10; 1999-2: 10; 1999-3: 10; 2001-1: 10; 2001-2: 10; 2001-3: 10;"
        "2003-1: 10; 2003-2: 10; 2003-3: 10")),
    "days of the year": ("19970101", "YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200",
        ("1997-1: 1; 1997-4: 10; 1997-7: 19; 2000-1: 1; 2000-4: 9; 2000-7: 18; 2003-1: 1;"
        "2003-4: 10; 2003-7: 19; 2006-1: 1")),
    "20th Mondays": ("19970519", "YEARLY;BYDAY=20MO", "1997-5: 19; 1998-5: 18; 1999-5: 17…"),
    "Mondays of week 20": ("19970512", "YEARLY;BYWEEKNO=20;BYDAY=MO",
        "1997-5: 12; 1998-5: 11; 1999-5: 17…"),
    "Thursdays in March": ("19970313", "YEARLY;BYMONTH=3;BYDAY=TH",
        "1997-3: 13,20,27; 1998-3: 5,12,19,26; 1999-3: 4,11,18,25…"),
    "Thursdays in summer": ("19970605", "YEARLY;BYDAY=TH;BYMONTH=6,7,8",
        ("1997-6: 5,12,19,26; 1997-7: 3,10,17,24,31; 1997-8: 7,14,21,28; 1998-6: 4,11,18,25;"
        "1998-7: 2,9,16,23,30; 1998-8: 6,13,20,27; 1999-6: 3,10,17,24;"
        "1999-7: 1,8,15,22,29; 1999-8: 5,12,19,26…")),
    "Fridays the 13th": ("19970902", "MONTHLY;BYDAY=FR;BYMONTHDAY=13",
        "1998-2: 13; 1998-3: 13; 1998-11: 13; 1999-8: 13; 2000-10: 13…"),
    "Saturdays after first Sundays": ("19970913",
        "MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13",
        ("1997-9: 13; 1997-10: 11; 1997-11: 8; 1997-12: 13; 1998-1: 10; 1998-2: 7; 1998-3: 7;"
        "1998-4: 11; 1998-5: 9; 1998-6: 13…")),
    "every fourth November": ("19961105",
        "YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8",
        "1996-11: 5; 2000-11: 7; 2004-11: 2…"),
    "third of three weekdays": ("19970904", "MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3",
        "1997-9: 4; 1997-10: 7; 1997-11: 6"),
    "last weekday but one": ("19970929", "MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2",
        ("1997-9: 29; 1997-10: 30; 1997-11: 27; 1997-12: 30; 1998-1: 29; 1998-2: 26;"
        "1998-3: 30…")),
    "weeks from Monday": ("19970805", "WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
        "1997-8: 5,10,19,24"),
    "weeks from Sunday": ("19970805", "WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
        "1997-8: 5,17,19,31"),
    "no 30 February": ("20070115", "MONTHLY;BYMONTHDAY=15,30;COUNT=5",
        "2007-1: 15,30; 2007-2: 15; 2007-3: 15,30"),
}  # fmt: skip

# Why the calendar file of what is booked is not answered from.

calendar-away = The calendar file is not there, or cannot be opened.
calendar-being-read = The calendar file is being read.
calendar-slow = The calendar file takes too long to read. Export the coming years alone.
calendar-not-utf8 = The calendar file is not UTF-8. Export it again, as .ics.
calendar-unread = The calendar file does not read as a calendar. Export it again.
calendar-too-large = The calendar file is larger than 4 MB. Export the coming years alone.
calendar-not-ics = The calendar file is not an iCalendar file. Export it again, as .ics.
calendar-cut = The calendar file breaks off before its end. Export it again.
calendar-too-many-entries = The calendar file has more entries than we read: { $most }.
calendar-too-many-days = The calendar file's entries recur on more days than we read: { $most } in all. End those that are over, or export the coming years alone.
calendar-not-daily = An entry of the calendar file recurs more often than daily. Write it as hours of each day.
calendar-stands-still = An entry of the calendar file recurs at an interval of zero. Write at least 1.
calendar-fault = Calendar not read: { $why }

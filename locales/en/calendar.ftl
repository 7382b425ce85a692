# What stands in a calendar: nothing that a stranger should not read on a locked telephone.

calendar-name = Visits
calendar-visit = Visit
calendar-bring = Bring your papers. Call if the day does not suit you.

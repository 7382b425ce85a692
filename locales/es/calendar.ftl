# What stands in a calendar: nothing that a stranger should not read on a locked telephone.

calendar-name = Visitas
calendar-visit = Visita
calendar-bring = Traiga sus papeles. Llame si el día no le va bien.

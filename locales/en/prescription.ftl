# Words of a prescription.

prescription-times = times

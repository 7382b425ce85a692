# Words of a prescription.

prescription-times = veces

# Texts of prescription.

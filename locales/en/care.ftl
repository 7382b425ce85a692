# Texts of care.

# Texts of exercises.

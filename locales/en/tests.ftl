# Texts of tests.

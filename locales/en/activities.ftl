# Texts of activities.

# The usual cautions. They stand in the help, in every output and on every sheet.

cautions-title = Before you use this
cautions-care = Only under the care of the operating surgeon.
cautions-decides = The clinician decides and signs. This program only proposes, and shows its reasons.
cautions-practice = Where local codes and licensed practice differ from this print, they decide.
cautions-emergency = This is not an emergency service. In danger, call the emergency number.
cautions-time = Not for time-critical use: nothing here alerts anybody in time.
cautions-line = Only under the care of the operating surgeon, who decides and signs. Local codes and licensed practice decide. Not an emergency service, not for time-critical use.

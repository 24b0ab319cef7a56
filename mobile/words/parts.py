"""Words that belong to a part itself, whichever screen it stands on."""

DELETE, POINT = "delete", "point"
SOURCE = "Source"
CANCEL = "Cancel"

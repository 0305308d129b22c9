"""A message is read sentence by sentence, its oldest part first: each changes the scene."""

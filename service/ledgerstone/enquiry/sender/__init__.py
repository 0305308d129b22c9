"""Who asks: name, address, telephone, and where the answer goes."""

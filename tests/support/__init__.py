"""What many tests need: nothing here is a test itself."""

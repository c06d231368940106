"""What a person sees, and every file that is read or written."""

"""Text to a number and back: quantities as a tape shows them, marks on tyres and threads, plain vectors and outlines."""

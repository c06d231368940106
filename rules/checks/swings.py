"""Do the joints swing far enough, and does the tyre stay clear, at the worst of all travel and lock?"""

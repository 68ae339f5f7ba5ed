"""Pieces of the window that are drawn by hand. They are given words and states; they ask nobody."""

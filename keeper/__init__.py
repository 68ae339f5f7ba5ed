"""A husbandry and feeding scheduler for people who keep and breed snakes in racks of tubs."""

__version__ = "0.1.0"

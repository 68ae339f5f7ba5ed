"""Invented names and colour lines."""

NAMES = (
    "Tansy", "Bracken", "Orrin", "Quill", "Merrow", "Sorrel", "Hob", "Reed", "Linnet", "Wick",
    "Campion", "Ash", "Fern", "Sedge", "Tamsin", "Corrie", "Yarrow", "Bask", "Nettle", "Thrum",
    "Vetch", "Marram", "Ochre", "Pell", "Teasel", "Rill", "Gorse", "Lark", "Madder", "Finch",
    "Woad", "Burr", "Skerry", "Moss", "Plum", "Harrow", "Dill", "Ember", "Fallow", "Gale",
    "Heath", "Inkle", "Juniper", "Kestrel", "Lovage", "Mallow", "Nub", "Oriel", "Pip", "Rook",
    "Sable", "Thistle", "Umber", "Wren", "Yew", "Zinnia", "Alder", "Briar", "Clove", "Drift",
)  # fmt: skip

LINES = ("Harrow ochre", "Tarn grey", "Fallow")

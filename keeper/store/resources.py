"""Where the files that come with the program are: profiles, icons, translations."""

from pathlib import Path


def resource_dir() -> Path:
    """The folder of resources: inside the package once installed, beside it in a checkout.

    Raises FileNotFoundError when neither is there, which means a broken installation.
    """
    package = Path(__file__).resolve().parents[1]
    for folder in (package / "resources", package.parent / "resources"):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(
        f"keeper's own resources are missing beside {package}; install keeper again."
    )

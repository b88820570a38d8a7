"""Make the writers of the round trip importable from the tests beside them."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))

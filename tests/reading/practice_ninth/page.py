"""The way from a written page to a table, under the name by which sets still ask for it."""

from practice.page import VOCABULARY as VOCABULARY
from practice.page import Page as Page
from practice.page import leaves as leaves
from practice.page import meaning as meaning
from practice.page import options as options
from practice.page import page as page

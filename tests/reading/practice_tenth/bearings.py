"""What follows from a bearing's designation, under the name by which sets still ask for it."""

from practice.bearings import basic as basic
from practice.bearings import follows as follows

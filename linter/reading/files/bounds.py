"""Time and memory that the work on one file may take.

The readers refuse what is too large before they work on it. This is the second line of defence: a file that costs more
than any real table does ends in an input error that names it, and the other tables of a call are reviewed all the same.
"""

import gc
import signal
import threading
import traceback
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from types import FrameType

from linter.reading.files.intake import InputError

#: Processor time for one file, in seconds. A table of 100 000 rows x 60 columns takes 4 to 6 s on the machine it was
#: measured on; a machine ten times as slow still has twice that.
PROCESSOR_SECONDS = 120.0
#: Address space beyond what the program holds already, in bytes. The same table takes about 0.5 GiB.
MEMORY = 2 * 2**30
#: The alarm comes again after so many seconds: one that falls into a place where Python cannot raise would be lost.
_AGAIN = 5.0
_STATM = Path("/proc/self/statm")


class _TooSlow(BaseException):
    """The alarm. No ``Exception``, so that no reader takes it for a fault of the file."""


@contextmanager
def within_bounds(file: str, seconds: float | None = None, memory: int | None = None) -> Iterator[None]:
    """Limit processor time and memory of what is done inside; for the work on one file.

    The limits hold on POSIX systems in the main thread, the one for memory where ``/proc`` tells the address space
    (Linux). Elsewhere (Windows, other threads) nothing is limited. Handler, timer and limit of before are put back. A
    call into compiled code is interrupted when it returns.

    Parameters
    ----------
    file : str
        The file as messages name it.
    seconds : float, optional
        Processor time; :data:`PROCESSOR_SECONDS` where absent.
    memory : int, optional
        Bytes beyond what the program holds already; :data:`MEMORY` where absent.

    Returns
    -------
    context manager
        Yields nothing.

    Raises
    ------
    InputError
        With the code ``too-slow`` or ``too-much-memory``.
    """
    seconds = PROCESSOR_SECONDS if seconds is None else seconds
    memory = MEMORY if memory is None else memory
    try:
        with ExitStack() as stack:
            if threading.current_thread() is threading.main_thread():
                _limit_memory(stack, memory)
                _limit_time(stack, seconds)
            yield
    except _TooSlow as alarm:
        _free(alarm)
        code, read = "too-slow", f"a file that takes more than {seconds:g} s of processor time"
    except MemoryError as error:
        _free(error)
        code, read = "too-much-memory", f"a file that takes more than {memory / 2**20:.0f} MiB of memory"
    else:
        return
    raise InputError(code, file, read, "a table of ordinary size; large ones are best split by machine") from None


@contextmanager
def without_collecting() -> Iterator[None]:
    """No search for circles of objects, for the reading of one file: very many are made, and hardly one in a circle.

    Returns
    -------
    context manager
        Yields nothing; whoever collected before does so afterwards.
    """
    collecting = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if collecting:
            gc.enable()


def _limit_time(stack: ExitStack, seconds: float) -> None:
    if not hasattr(signal, "setitimer"):
        return
    armed = True

    def ring(_number: int, _frame: FrameType | None) -> None:
        if armed:
            raise _TooSlow

    before = signal.signal(signal.SIGPROF, ring)
    timer = signal.setitimer(signal.ITIMER_PROF, seconds, _AGAIN)

    def disarm() -> None:
        nonlocal armed
        armed = False
        signal.setitimer(signal.ITIMER_PROF, *timer)
        signal.signal(signal.SIGPROF, signal.SIG_DFL if before is None else before)

    stack.callback(disarm)


def _limit_memory(stack: ExitStack, memory: int) -> None:
    try:
        import resource

        used = int(_STATM.read_text().split()[0]) * resource.getpagesize()
    except (ImportError, OSError, ValueError, IndexError):
        return
    soft, hard = resource.getrlimit(resource.RLIMIT_AS)
    wanted = used + memory
    allowed = [limit for limit in (soft, hard) if limit != resource.RLIM_INFINITY]
    restore: Callable[..., None] = resource.setrlimit
    resource.setrlimit(resource.RLIMIT_AS, (min([wanted, *allowed]), hard))
    stack.callback(restore, resource.RLIMIT_AS, (soft, hard))


def _free(error: BaseException) -> None:
    """Let go of everything that the frames of an error hold, so that there is memory to go on with."""
    link: BaseException | None = error
    while link is not None:
        traceback.clear_frames(link.__traceback__)
        link.__traceback__, link = None, link.__context__
    gc.collect()

"""Who does the work of the stages: processes of this machine, or workers of a dask scheduler, to the same files."""

from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context
from typing import Any, Protocol

from attrs import define, field, frozen

#: How often a piece of work is tried whose worker ends while it is at it.
TRIES = 3


@frozen
class Done:
    """A finished piece of work: its number among those given, and what it returned; or why it was given up.

    ``error`` is what it raised, where it raised something.
    """

    number: int
    value: Any = None
    reason: str = ""
    error: BaseException | None = None

    @classmethod
    def of(cls, number: int, error: BaseException | None, value: Callable[[], Any]) -> "Done":
        """A piece that came to an end by itself; its value is asked for where it raised nothing."""
        return cls(number, value()) if error is None else cls(number, None, f"{type(error).__name__}: {error}", error)


class Workers(Protocol):
    """Something that runs a function over pieces of work, in any order."""

    def run(self, function: Callable[..., Any], pieces: Sequence[tuple[Any, ...]]) -> Iterator[Done]:
        """Each piece once, as it is finished."""


@frozen
class Processes:
    """Processes of this machine.

    Where one is killed the pool is made anew, and what was under way is done again, :data:`TRIES` times in all: one
    after the other then, so that it is known which piece it was.
    """

    count: int

    def run(self, function: Callable[..., Any], pieces: Sequence[tuple[Any, ...]]) -> Iterator[Done]:
        """Each piece once, as it is finished."""
        left = dict(enumerate(pieces))
        tries = dict.fromkeys(left, 0)
        while left:
            suspects = {number for number, count in tries.items() if count and number in left}
            now = {number: left[number] for number in left if number not in suspects}
            if now:
                yield from self._pool(function, now, left, tries, self.count)
            for number in sorted(suspects):
                yield from self._pool(function, {number: left[number]}, left, tries, 1)
                if number in left and tries[number] >= TRIES:
                    left.pop(number)
                    yield Done(number, reason=f"its process ended {tries[number]} times while it was at this piece")

    def _pool(
        self, function: Callable[..., Any], now: dict[int, tuple[Any, ...]], left: dict[int, tuple[Any, ...]],
        tries: dict[int, int], count: int,
    ) -> Iterator[Done]:  # fmt: skip
        """Work until all is done or a process ends; what may have been under way then has one try more behind it."""
        waiting = list(now)[::-1]
        running: dict[Future[Any], int] = {}
        with ProcessPoolExecutor(min(count, len(now)), mp_context=get_context("spawn")) as pool:
            while waiting or running:
                try:
                    while waiting and len(running) < 2 * count:
                        number = waiting.pop()
                        running[pool.submit(function, *now[number])] = number
                except BrokenProcessPool:
                    tries[number] += 1
                    break
                done, _ = wait(running, return_when=FIRST_COMPLETED)
                broken = False
                for future in done:
                    number = running.pop(future)
                    error = future.exception()
                    if isinstance(error, BrokenProcessPool):
                        tries[number] += 1
                        broken = True
                        continue
                    left.pop(number)
                    yield Done.of(number, error, future.result)
                if broken:
                    break
        for future, number in running.items():
            if future.done() and future.exception() is None and number in left:
                left.pop(number)
                yield Done(number, future.result())
            elif number in left:
                tries[number] += 1


class NoScheduler(OSError):
    """A scheduler that does not answer."""


@define
class Cluster:
    """Workers of a dask scheduler (``dask scheduler`` and ``dask worker ADDRESS``), which retries what is lost."""

    address: str
    seconds: float = 20.0
    _client: Any = field(default=None, init=False)

    def run(self, function: Callable[..., Any], pieces: Sequence[tuple[Any, ...]]) -> Iterator[Done]:
        """Each piece once, as it is finished."""
        from distributed import as_completed

        client = self.client()
        futures = [client.submit(function, *piece, pure=False, retries=TRIES) for piece in pieces]
        number_of = {future.key: number for number, future in enumerate(futures)}
        with client.as_current():
            finished = as_completed(futures)
        for future in finished:
            number, error = number_of[future.key], future.exception()
            yield Done.of(number, error, future.result)

    def client(self) -> Any:
        """The client of the scheduler; :class:`NoScheduler` where it does not answer."""
        if self._client is None:
            from distributed import Client

            try:
                self._client = Client(self.address, timeout=self.seconds, set_as_default=False)
            except (OSError, TimeoutError, ValueError) as error:
                raise NoScheduler(f"the scheduler {self.address!r} does not answer: {error}") from None
        return self._client

    def close(self) -> None:
        """Leave the scheduler."""
        if self._client is not None:
            self._client.close()
            self._client = None

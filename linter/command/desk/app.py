"""The pages of the desk: forms that work without script, answers to this machine only."""

import base64
import hashlib
import tempfile
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

from starlette.applications import Starlette
from starlette.datastructures import FormData, UploadFile
from starlette.exceptions import HTTPException
from starlette.formparsers import MultiPartException
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, PlainTextResponse, RedirectResponse, Response
from starlette.routing import Route
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from linter.command.desk.jobs import Job, Jobs
from linter.model.findings import SEVERITIES
from linter.model.vocabulary import vocabulary
from linter.model.wording import words_of
from linter.report.html import environment, style

#: Largest upload of one form, and most files in it.
LARGEST, MOST_FILES = 200 * 2**20, 50
_HERE = Path(__file__).parent
_TYPES = {
    ".html": "text/html; charset=utf-8", ".json": "application/json", ".csv": "text/csv; charset=utf-8",
    ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", ".txt": "text/plain; charset=utf-8",
    ".xml": "application/xml", ".toml": "text/plain; charset=utf-8",
}  # fmt: skip
_TITLES = {
    400: "What was sent could not be used", 403: "Not from this page", 404: "There is no such page",
    405: "This cannot be done", 413: "Too large",
}  # fmt: skip


def _hash(text: str) -> str:
    return base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()


def own_style() -> str:
    """What the forms add to the style of the reports."""
    return (_HERE / "desk.css").read_text(encoding="utf-8")


class Guard:
    """Lets through what comes from this page of this machine, and bounds what is sent.

    Parameters
    ----------
    app : ASGI application
        What stands behind it.
    hosts : set of str
        Values of the header Host that are this desk.
    token : str
        First part of every path.
    """

    def __init__(self, app: ASGIApp, hosts: set[str], token: str) -> None:
        self.app, self.hosts, self.token = app, hosts, token
        styles = f"'sha256-{_hash(str(style()))}' 'sha256-{_hash(own_style())}'"
        self.policy = (
            f"default-src 'none'; style-src {styles}; script-src 'self'; connect-src 'self'; form-action 'self'; "
            "base-uri 'none'; frame-ancestors 'none'"
        )

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        headers = {key.decode("latin-1"): value.decode("latin-1") for key, value in scope["headers"]}
        refused = self._refused(scope, headers)
        if refused is not None:
            await _page(refused)(scope, receive, self._sending(send))
            return
        taken = 0

        async def counted() -> Message:
            nonlocal taken
            message = await receive()
            taken += len(message.get("body", b""))
            if taken > LARGEST:
                raise HTTPException(413, f"at most {LARGEST // 2**20} MiB are taken at once")
            return message

        await self.app(scope, counted, self._sending(send))

    def _refused(self, scope: Scope, headers: dict[str, str]) -> HTTPException | None:
        if headers.get("host", "") not in self.hosts:
            return HTTPException(403, "the address in the request is not that of this desk")
        if not scope["path"].startswith(f"/{self.token}/"):
            return HTTPException(404, "open the whole address that the program printed, with its random part")
        if scope["method"] not in ("GET", "HEAD"):
            origin = headers.get("origin", "")
            if origin.removeprefix("http://") not in self.hosts:
                return HTTPException(403, "a form is taken from the desk's own pages only")
            if int(headers.get("content-length") or 0) > LARGEST:
                return HTTPException(413, f"at most {LARGEST // 2**20} MiB are taken at once")
        return None

    def _sending(self, send: Send) -> Send:
        async def safely(message: Message) -> None:
            if message["type"] == "http.response.start":
                given = {key.lower() for key, _ in message["headers"]}
                wanted = {
                    b"content-security-policy": self.policy.encode(), b"x-content-type-options": b"nosniff",
                    b"referrer-policy": b"same-origin", b"cache-control": b"no-store",
                    b"cross-origin-opener-policy": b"same-origin", b"cross-origin-resource-policy": b"same-origin",
                }  # fmt: skip
                message["headers"] = [*message["headers"], *((k, v) for k, v in wanted.items() if k not in given)]
            await send(message)

        return safely


def _page(error: HTTPException) -> HTMLResponse:
    title = _TITLES.get(error.status_code, "This went wrong")
    return _html("desk_error.html.j2", status=error.status_code, title=title, detail=error.detail)


def _html(template: str, status: int = 200, **values: Any) -> HTMLResponse:
    text = environment().get_template(template).render(own_style=own_style(), **values)
    return HTMLResponse(text.encode("utf-8", "backslashreplace"), status)


class Desk:
    """The pages over the reviews.

    Parameters
    ----------
    jobs : Jobs
        The reviews.
    token : str
        First part of every path.
    rulebooks : list of str
        Versions to choose from, the newest first.
    also : list of (str, str)
        Further commands over a table, with what their button says.
    """

    def __init__(self, jobs: Jobs, token: str, rulebooks: list[str], also: list[tuple[str, str]]) -> None:
        self.jobs, self.base, self.rulebooks, self.also = jobs, f"/{token}", rulebooks, also

    def routes(self) -> list[Route]:
        """Every page with its address."""
        pages: list[tuple[str, str, Callable[[Request], Awaitable[Response]]]] = [
            ("/", "GET", self.start), ("/review", "POST", self.review), ("/job/{id}", "GET", self.job),
            ("/job/{id}/stop", "POST", self.stop), ("/job/{id}/names", "POST", self.names),
            ("/job/{id}/also", "POST", self.further), ("/job/{id}/file/{name:path}", "GET", self.file),
            ("/desk.js", "GET", self.script),
        ]  # fmt: skip
        return [Route(f"{self.base}{path}", page, methods=[method]) for path, method, page in pages]

    async def start(self, request: Request) -> Response:
        """The form, and the reviews so far."""
        return _html(
            "desk.html.j2", base=self.base, rulebooks=self.rulebooks, severities=SEVERITIES,
            jobs=list(self.jobs.known.values())[::-1], largest=LARGEST // 2**20, most=MOST_FILES,
        )  # fmt: skip

    async def script(self, request: Request) -> Response:
        """Drag and drop; nothing needs it."""
        return PlainTextResponse((_HERE / "desk.js").read_bytes(), media_type="text/javascript")

    async def review(self, request: Request) -> Response:
        """Take the tables of a form and start their review."""
        async with request.form(max_files=MOST_FILES + 1, max_fields=20) as form:
            options = {"gate": self._one_of(form, "gate", SEVERITIES), "rulebook": ""}
            if form.get("rulebook"):
                options["rulebook"] = self._one_of(form, "rulebook", self.rulebooks)
            files = [f for f in form.getlist("tables") if isinstance(f, UploadFile) and f.filename]
            if not files:
                raise HTTPException(400, "no table was chosen; choose one or more files and send the form again")
            mapping = form.get("mapping")
            text = ""
            if isinstance(mapping, UploadFile) and mapping.filename:
                text = (await mapping.read()).decode("utf-8", "replace")
            taken = []
            for upload in files:
                with tempfile.NamedTemporaryFile(dir=self.jobs.root, delete=False) as target:
                    while piece := await upload.read(2**20):
                        target.write(piece)
                taken.append((str(upload.filename), Path(target.name)))
        job = self.jobs.start(taken, options, text)
        return self._to(job)

    @staticmethod
    def _one_of(form: FormData, name: str, known: Any) -> str:
        value = str(form.get(name, ""))
        if value not in known:
            raise HTTPException(400, f"{name}: read {value!r}, expected one of {', '.join(known)}")
        return value

    def _to(self, job: Job) -> Response:
        return RedirectResponse(f"{self.base}/job/{job.id}", 303)

    def _job(self, request: Request) -> Job:
        job = self.jobs.known.get(request.path_params["id"])
        if job is None:
            raise HTTPException(404, "this review is no longer kept; start it again")
        return job

    async def job(self, request: Request) -> Response:
        """One review: how far it is, and what it says."""
        job = self._job(request)
        results = [(name, result, _unread(result)) for name, result in job.results()]
        return _html(
            "desk_job.html.j2", base=self.base, job=job, results=results, files=job.files(), also=self.also,
            parameters=[(name, words_of(name)) for name in vocabulary() if name not in ("machine", "station")],
            aspects=("value", "upper", "lower", "max", "min", "class"),
        )  # fmt: skip

    async def stop(self, request: Request) -> Response:
        """End a review."""
        job = self._job(request)
        self.jobs.stop(job)
        return self._to(job)

    async def further(self, request: Request) -> Response:
        """Run another command over a table of a review."""
        job = self._job(request)
        async with request.form(max_fields=5) as form:
            command = self._one_of(form, "command", [name for name, _ in self.also])
            table = self._one_of(form, "table", job.tables)
        if not job.over:
            raise HTTPException(400, "the review is still running; wait for its end")
        self.jobs.also(job, command, table)
        return self._to(job)

    async def names(self, request: Request) -> Response:
        """Say what columns mean, and review again."""
        job = self._job(request)
        async with request.form(max_fields=2000) as form:
            lines = ["[names]"]
            for number in range(1000):
                word = form.get(f"word-{number}")
                if word is None:
                    break
                chosen, aspect = str(form.get(f"means-{number}", "")), str(form.get(f"aspect-{number}", "value"))
                if chosen in vocabulary():
                    meaning = f'{{parameter = "{chosen}", aspect = "{aspect}"}}' if aspect != "value" else f'"{chosen}"'
                    lines.append(f"{_toml(str(word))} = {meaning}")
        if len(lines) == 1:
            raise HTTPException(400, "nothing was chosen: choose a parameter for one column at least")
        before = job.folder / "names.toml"
        kept = before.read_text(encoding="utf-8") if before.exists() else ""
        return self._to(self.jobs.again(job, _merged(kept, lines)))

    async def file(self, request: Request) -> Response:
        """A report or another file of a review."""
        job = self._job(request)
        name = request.path_params["name"]
        if name not in job.files():
            raise HTTPException(404, "this review has no such file")
        path = next(p for p in job.out.rglob("*") if p.is_file() and p.name == name)
        kind = _TYPES.get(path.suffix.lower(), "application/octet-stream")
        policy = (
            "default-src 'none'; style-src 'unsafe-inline'; form-action 'none'; base-uri 'none'; sandbox allow-popups"
        )
        shown = path.suffix.lower() in (".html", ".txt")
        return FileResponse(
            path, media_type=kind, filename=None if shown else path.name, headers={"content-security-policy": policy}
        )


def _unread(result: dict[str, Any]) -> list[tuple[str, str]]:
    """Names of a table that were not used, each once, with a value."""
    found: dict[str, str] = {}
    for entry in result.get("unrecognised", ()):
        if entry.get("name"):
            found.setdefault(entry["name"], str(entry.get("value", "")))
    return list(found.items())[:200]


def _toml(text: str) -> str:
    escaped = "".join(
        f"\\u{ord(c):04x}" if ord(c) < 32 or ord(c) == 127 or c in '"\\' else c for c in text
    )  # fmt: skip
    return f'"{escaped}"'


def _merged(kept: str, lines: list[str]) -> str:
    """A mapping with more names: those of an earlier answer stay where nothing else is said."""
    said = {line.partition(" = ")[0] for line in lines}
    if "[names]" not in kept:
        return "\n".join([*lines, "", kept])
    head, _, rest = kept.partition("[names]")
    old = [line for line in rest.split("\n") if line.partition(" = ")[0] not in said]
    return "\n".join([head + lines[0], *lines[1:], *old])


def application(desk: Desk, hosts: set[str], token: str) -> ASGIApp:
    """The desk as an ASGI application.

    Parameters
    ----------
    desk : Desk
        Its pages.
    hosts : set of str
        Values of the header Host that are this desk, such as ``127.0.0.1:8123``.
    token : str
        First part of every path.

    Returns
    -------
    ASGI application
    """

    async def told(request: Request, error: Exception) -> Response:
        if isinstance(error, MultiPartException):
            return _page(HTTPException(400, error.message))
        assert isinstance(error, HTTPException)
        return _page(error)

    app = Starlette(routes=desk.routes(), exception_handlers={HTTPException: told, MultiPartException: told})
    return Guard(app, hosts, token)

"""One call of ``ringseat desk``: the server on the loopback address, from start to end."""

import os
import secrets
import signal
import socket
import threading
import webbrowser
from contextlib import suppress

import click

from linter.command.console import complain
from linter.command.desk.app import Desk, application
from linter.command.desk.jobs import desk_jobs
from linter.rulebook.load import released_versions, version_key

DONE, NOT_DONE = 0, 2
HOST = "127.0.0.1"


def serve(port: int, *, show: bool, also: list[tuple[str, str]], together: int | None = None) -> int:
    """Serve the desk until it is interrupted.

    Parameters
    ----------
    port : int
        Port; 0 for one that is free.
    show : bool
        Whether the browser is opened.
    also : list of (str, str)
        Further commands over a table, with what their button says.
    together : int, optional
        Reviews that run at once; two at most, and no more than processors.

    Returns
    -------
    int
        0, or 2 where the port could not be had.
    """
    import uvicorn

    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        if os.name == "posix":
            listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listening.bind((HOST, port))
    except OSError as error:
        complain(f"--port {port}: is not available ({error.strerror}); name another, or 0 for one that is free")
        return NOT_DONE
    port = listening.getsockname()[1]
    token = secrets.token_urlsafe(18)
    hosts = {f"{HOST}:{port}", f"localhost:{port}"}
    address = f"http://{HOST}:{port}/{token}/"
    with desk_jobs(together or min(2, os.cpu_count() or 1)) as jobs:
        app = application(Desk(jobs, token, sorted(released_versions(), key=version_key)[::-1], also), hosts, token)
        config = uvicorn.Config(
            app, log_level="error", access_log=False, server_header=False, timeout_graceful_shutdown=3,
            timeout_keep_alive=20, proxy_headers=False, ws="none",
        )  # fmt: skip
        server = uvicorn.Server(config)
        click.echo(f"the desk is open at {address}")
        click.echo("everything stays on this machine; ctrl+c ends it and removes its files")
        if show:
            threading.Timer(0.5, webbrowser.open, (address,)).start()
        for name in ("SIGTERM", "SIGHUP"):  # ends as ctrl+c does, with every file removed
            if hasattr(signal, name):
                signal.signal(getattr(signal, name), signal.default_int_handler)
        with suppress(KeyboardInterrupt):
            server.run(sockets=[listening])
    return DONE

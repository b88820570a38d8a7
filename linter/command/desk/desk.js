"use strict";
const zone = document.querySelector("main");
const input = document.querySelector("input[name=tables]");
if (zone && input) {
  zone.addEventListener("dragover", (event) => { event.preventDefault(); input.classList.add("over"); });
  zone.addEventListener("dragleave", () => input.classList.remove("over"));
  zone.addEventListener("drop", (event) => {
    event.preventDefault();
    input.classList.remove("over");
    if (event.dataTransfer.files.length) {
      input.files = event.dataTransfer.files;
      document.querySelector("button[type=submit]").focus();
    }
  });
}

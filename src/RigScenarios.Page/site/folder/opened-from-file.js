
if (location.protocol === "file:") {
  document.getElementById("opened-from-file")?.removeAttribute("hidden");
  document.documentElement.classList.add("opened-from-file");
}

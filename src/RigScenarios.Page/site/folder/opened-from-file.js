
if (location.protocol === "file:") {
  document.getElementById("opened-from-file").hidden = false;
  document.documentElement.classList.add("opened-from-file");
}

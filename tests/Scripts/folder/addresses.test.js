// The addresses of the folder's pages: the same names as the server's, relative, and read again as they were written.
import assert from "node:assert/strict";
import { test } from "node:test";
import { goTo } from "../browser.js";
import * as ofFolder from "../../../src/RigScenarios.Page/site/folder/addresses.js";
import * as ofSaved from "../../../src/RigScenarios.Page/site/saved/addresses.js";
import * as ofServer from "../../../src/RigScenarios.Page/site/shared/addresses.js";

const HERE = "http://localhost/some/place/index.html";

test("the folder, and a saved page, have every address that pages ask for", () => {
  for (const other of [ofFolder, ofSaved]) {
    assert.deepEqual(Object.keys(other).sort(), Object.keys(ofServer).sort());
    assert.deepEqual(Object.keys(other.pageOf).sort(), Object.keys(ofServer.pageOf).sort());
    assert.notEqual(other.LINKS_OPEN, ofServer.LINKS_OPEN);
  }
});

test("whatever place the folder has, its pages lie in it", () => {
  const { pageOf } = ofFolder;
  const all = [pageOf.rig(), pageOf.rig({ file: "own/a b.yaml", build: "x&y" }), pageOf.file("own/../%2F?#.yaml"),
    pageOf.task("x"), pageOf.notebook("../../evil"), pageOf.notebook("07 a", { scenario: "own/a.yaml" })];
  for (const address of all) assert.match(new URL(address, HERE).href, /^http:\/\/localhost\/some\/place\/[a-z]+\.html/);
});

test("a page knows what it shows from its address", () => {
  for (const id of ["own/my rig.yaml", "samples/é&=#?.yaml"]) {
    goTo(`/x/${ofFolder.pageOf.file(id)}`);
    assert.equal(ofFolder.fileHere(), id);
  }
  goTo(`/x/${ofFolder.pageOf.notebook("01 a&b", { cold: "5" })}`);
  assert.equal(ofFolder.notebookHere(), "01 a&b");
  assert.equal(location.hash, "#cold=5");
  assert.equal(ofFolder.taskHere(), null);
});

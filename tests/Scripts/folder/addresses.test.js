// The addresses of the folder's pages: the same names as the server's, relative, and read again as they were written.
import assert from "node:assert/strict";
import { test } from "node:test";
import { goTo } from "../browser.js";
import * as ofFolder from "../../../src/RigScenarios.Page/site/folder/addresses.js";
import * as ofServer from "../../../src/RigScenarios.Page/site/shared/addresses.js";

const HERE = "http://localhost/some/place/index.html";

test("the folder has every address that pages ask for", () => {
  assert.deepEqual(Object.keys(ofFolder).sort(), Object.keys(ofServer).sort());
  assert.deepEqual(Object.keys(ofFolder.pageOf).sort(), Object.keys(ofServer.pageOf).sort());
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

// The sentence of the first visit: one, and true for each end.
import "./browser.js";
import assert from "node:assert/strict";
import { test } from "node:test";
import { firstSentence, whereItStays } from "../../src/RigScenarios.Page/site/shared/first-visit.js";

test("each end says where what is entered stays", () => {
  for (const host of ["localhost", "127.0.0.1", "[::1]"])
    assert.match(whereItStays({ folder: true }, host), /^everything stays on this machine/, host);
  // A server that listens on the network sends to a phone, and a phone to it.
  assert.match(whereItStays({ folder: true }, "192.168.1.20"), /^everything goes to the computer that this page came from/);
  assert.match(whereItStays({ folder: false }, "example.org"), /^everything stays in this browser/);
  assert.match(whereItStays({ folder: false }, "localhost"), /^everything stays in this browser/);
});

test("it is one sentence, promises nothing and defers to the makers", () => {
  for (const [folder, host] of /** @type {[boolean, string][]} */ ([[true, "127.0.0.1"], [true, "10.0.0.3"], [false, "x.org"]])) {
    const sentence = firstSentence({ folder }, host);
    assert.equal(sentence.match(/[.!?](\s|$)/g)?.length, 1, sentence);
    assert.doesNotMatch(sentence, /\bsafe/i);
    assert.match(sentence, /the makers' limits go first\.$/);
  }
});

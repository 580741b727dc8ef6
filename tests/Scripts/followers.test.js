// Which cells of a notebook follow which parameter: learnt from runs, and never guessed.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Followers } from "../../src/RigScenarios.Page/site/notebook/followers.js";

const learnt = () => {
  const followers = new Followers();
  followers.learn("now", { cold: "0", build: "a" }, [1, 2, 3]);
  followers.learn("now", { cold: "5", build: "a" }, [2]);
  return followers;
};

test("before anything was run nothing is known", () => {
  assert.equal(new Followers().of("now", { cold: "0" }), null);
});

test("a run with one value changed teaches what follows it", () => {
  assert.deepEqual(learnt().of("now", { cold: "9", build: "a" }), new Set([2]));
});

test("of a value that never changed alone nothing is known", () => {
  const followers = learnt();
  assert.equal(followers.of("now", { cold: "5", build: "b" }), null);
  followers.learn("now", { cold: "7", build: "b" }, [1, 2, 3]);
  assert.equal(followers.of("now", { cold: "7", build: "c" }), null, "two values changed at once");
});

test("with several known values their cells come together", () => {
  const followers = learnt();
  followers.learn("now", { cold: "5", build: "b" }, [1, 3]);
  assert.deepEqual(followers.of("now", { cold: "6", build: "c" }), new Set([1, 2, 3]));
});

test("where nothing changes nothing follows", () => {
  assert.deepEqual(learnt().of("now", { cold: "5", build: "a" }), new Set());
});

test("a version that was forgotten shows nothing", () => {
  const followers = learnt();
  assert.equal(followers.isShown("now", "cold", "5"), true);
  followers.forget("now");
  assert.equal(followers.isShown("now", "cold", "5"), false);
  assert.equal(followers.of("now", { cold: "9", build: "a" }), null);
});

test("versions are known apart, what follows is not", () => {
  const followers = learnt();
  followers.learn("pinned", { cold: "0", build: "a" }, [1, 2, 3]);
  assert.equal(followers.isShown("pinned", "cold", "5"), false);
  assert.deepEqual(followers.of("pinned", { cold: "1", build: "a" }), new Set([2]));
});

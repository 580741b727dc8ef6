using RigScenarios.Page.Saved;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>Scripts that a page carries: each after what it imports, by the names under which they are carried.</summary>
public sealed class CarriedScriptsTests
{
    [Fact]
    public void Each_stands_after_all_that_it_imports_and_no_other_comes_along()
    {
        var scripts = CarriedScripts.Of(new Dictionary<string, string>
        {
            ["a/page.js"] = "import { one,\n  two } from \"./near.js\";\nimport \"../b/far.js\";\n"
                + "export { far } from \"../b/far.js\";\n",
            ["a/near.js"] = "import { far } from \"../b/far.js\";\nexport const one = far, two = 2;\n",
            ["b/far.js"] = "export const far = 1;\n",
            ["b/other.js"] = "export const other = 1;\n",
        }, ["a/page.js"]);
        Assert.Equal(["b/far.js", "a/near.js", "a/page.js"], scripts.Select(script => script.Name));
        Assert.Equal("import { one,\n  two } from \"carried:a/near.js\";\nimport \"carried:b/far.js\";\n"
            + "export { far } from \"carried:b/far.js\";\n", scripts[2].Text);
    }

    [Fact]
    public void What_a_script_asks_for_while_it_runs_is_carried_too()
    {
        var script = Assert.Single(CarriedScripts.Of(new Dictionary<string, string>
        {
            ["library/_framework/x.js"] = "const a=await import(/* b */c),d=new URL(\"./e\",import.meta.url);f.import(g);"
                + "reimport(h)",
        }, ["library/_framework/x.js"]));
        Assert.Equal("const a=await globalThis.carried.load(/* b */c),d=new URL(\"./e\","
            + "\"https://carried.invalid/library/_framework/x.js\");f.import(g);reimport(h)", script.Text);
    }

    [Fact]
    public void What_is_no_import_stays_as_it_is()
    {
        const string text = "// import { a } from \"./b.js\";\n/** @import { C } from \"./d.js\" */\n"
            + "export function e() { return \"./f.js\"; }\nexport const g = \"./h.js\";\n";
        Assert.Equal(text, Assert.Single(CarriedScripts.Of(new Dictionary<string, string> { ["i.js"] = text }, ["i.js"])).Text);
    }

    [Fact]
    public void A_circle_and_a_script_that_is_not_there_are_told_by_name()
    {
        var circle = Assert.Throws<InvalidOperationException>(() => CarriedScripts.Of(new Dictionary<string, string>
        {
            ["a.js"] = "import \"./b.js\";\n",
            ["b.js"] = "import \"./a.js\";\n",
        }, ["a.js"]));
        Assert.Contains("a.js, b.js, a.js", circle.Message, StringComparison.Ordinal);
        var missing = Assert.Throws<InvalidOperationException>(() => CarriedScripts.Of(
            new Dictionary<string, string> { ["a.js"] = "import \"./none.js\";\n" }, ["a.js"]));
        Assert.Contains("no script none.js, which a.js imports", missing.Message, StringComparison.Ordinal);
    }
}

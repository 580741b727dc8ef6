using System.Reflection;
using System.Runtime.Loader;
using RigScenarios.Browser.Packing;
using RigScenarios.Scenarios;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>The units library as it is cut down for browsers: what stays answers as the whole one does.</summary>
public sealed class UnitsInUseTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rigscenarios-units-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_quantities_that_the_library_names_stay_in_their_order_and_no_others()
    {
        var (kept, cut) = Cut();
        Assert.Contains("Mass", kept);
        Assert.Contains("ElectricCharge", kept);
        Assert.DoesNotContain("VitaminA", kept);
        Assert.InRange(kept.Count, 15, 60);
        var names = ((IEnumerable<string>)cut.GetType("UnitsNet.Quantity")!.GetProperty("Names")!.GetValue(null)!).ToList();
        Assert.Equal(Quantity.Names.Where(kept.Contains), names);
    }

    [Fact]
    public void A_quantity_that_stays_is_made_and_written_as_by_the_whole_library()
    {
        var (kept, cut) = Cut();
        var asked = Quantity.Infos.Where(info => kept.Contains(info.Name)).SelectMany(info => info.UnitInfos).ToList();
        Each.Of(asked, unit => Assert.Equal(Quantity.From(12.5, unit.Value).ToString(null, null), Made(cut, unit.Value)));
    }

    [Fact]
    public void A_quantity_that_went_is_not_made()
    {
        var (_, cut) = Cut();
        var failure = Assert.Throws<TargetInvocationException>(() => Made(cut, VitaminAUnit.InternationalUnit));
        Assert.IsNotType<NullReferenceException>(failure.InnerException);
    }

    [Fact]
    public void A_program_that_names_no_quantity_is_refused() => Assert.Throws<InvalidDataException>(() =>
        UnitsInUse.Write(typeof(Quantity).Assembly.Location, [typeof(PackedLibrary).Assembly.Location], File("none.dll")));

    [Fact]
    public void What_nothing_changed_in_is_not_written_anew()
    {
        Cut();
        var written = new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc);
        System.IO.File.SetLastWriteTimeUtc(File("UnitsNet.dll"), written);
        Cut();
        Assert.Equal(written, System.IO.File.GetLastWriteTimeUtc(File("UnitsNet.dll")));
    }

    private (IReadOnlyList<string> Kept, Assembly Library) Cut()
    {
        var kept = UnitsInUse.Write(typeof(Quantity).Assembly.Location, [typeof(Scenario).Assembly.Location],
            File("UnitsNet.dll"));
        var place = new AssemblyLoadContext("cut", isCollectible: true);
        using var content = new MemoryStream(System.IO.File.ReadAllBytes(File("UnitsNet.dll")));
        return (kept, place.LoadFromStream(content));
    }

    private static string Made(Assembly cut, Enum unit)
    {
        var there = Enum.ToObject(cut.GetType(unit.GetType().FullName!)!, unit);
        var figure = cut.GetType("UnitsNet.QuantityValue")!;
        var value = figure.GetMethod("op_Implicit", [typeof(double)])!.Invoke(null, [12.5]);
        var made = cut.GetType("UnitsNet.Quantity")!.GetMethod("From", [figure, typeof(Enum)])!.Invoke(null, [value, there])!;
        return ((IFormattable)made).ToString(null, null);
    }

    private string File(string name) => Path.Combine(folder, name);
}

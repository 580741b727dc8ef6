using RigScenarios.Browser.Packing;

// Run by the build of the library for browsers: see OneFile.targets and Units.targets there.
switch (args)
{
    case ["pack", var folder, var file] when Directory.Exists(folder):
        PackedLibrary.Write(folder, file);
        return 0;
    case ["units", var library, var assemblies, var file] when File.Exists(assemblies):
        var kept = UnitsInUse.Write(library, File.ReadAllLines(assemblies), file);
        Console.WriteLine($"{kept.Count} quantities stay: {string.Join(", ", kept)}");
        return 0;
    default:
        Console.Error.WriteLine("Usage: pack FOLDER FILE, or units LIBRARY ASSEMBLIES FILE, ASSEMBLIES being a file of paths");
        return 2;
}

using RigScenarios.Browser.Packing;

// Run by the build of the library for browsers: see its OneFile.targets.
if (args is not [var folder, var file] || !Directory.Exists(folder))
{
    Console.Error.WriteLine("Usage: FOLDER FILE, with a folder of files that are packed into that file");
    return 2;
}

PackedLibrary.Write(folder, file);
return 0;

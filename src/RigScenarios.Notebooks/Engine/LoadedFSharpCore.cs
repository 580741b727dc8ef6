using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// Jupyter's C# kernel carries an older FSharp.Core than Plotly.NET asks for, and two copies in one process do not mix. The
/// loaded one serves every call made here, so it is given to whoever asks for a newer one.
/// </summary>
internal static class LoadedFSharpCore
{
    // A module initializer, because it must run before the first type of Plotly.NET is touched.
#pragma warning disable CA2255 // meant for applications; here the notebook's process is one, and no other hook comes early enough
    [ModuleInitializer]
    internal static void Offer() => AssemblyLoadContext.Default.Resolving += (context, name) =>
        name.Name == "FSharp.Core" ? context.LoadFromAssemblyName(new AssemblyName("FSharp.Core")) : null;
#pragma warning restore CA2255
}

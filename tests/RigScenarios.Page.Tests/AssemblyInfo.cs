using Xunit.Sdk;

// A server sets the process's current folder and captures its console: one test at a time.
[assembly: Parallelization(Mode = ParallelizationMode.None)]

using Configurator.Benchmarks;

return args switch
{
    ["count", var file] => CountCommand.Run(file, Console.Out),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("count FILE   number of solutions of a DIMACS CNF file (.cnf or .cnf.gz)");
    return 2;
}

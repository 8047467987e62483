using Configurator.Benchmarks;
using Configurator.Benchmarks.Examples;

try
{
    return args switch
    {
        ["count", var file] => CountCommand.Run(file, Console.Out),
        ["curve"] => CurveCommand.Run(Console.Out),
        ["cover", var model, var constraints] => CoverCommand.Run(model, constraints, Console.Out),
        ["cover", var model] => CoverCommand.Run(model, "", Console.Out),
        ["example", var file] => ExampleCommand.Run(file, Console.Out),
        ["optimum", var file] => OptimumCommand.Run(file, Console.Out),
        ["picker", var site, var folder] => PickerCommand.Run(site, folder, Console.Out),
        ["propagate", var file] => PropagateCommand.Run(file, Console.Out),
        _ => Usage(),
    };
}
catch (Exception problem)
    when (problem is FormatException or IOException or UnauthorizedAccessException or InvalidDataException)
{
    Console.Error.WriteLine($"{args[1]}: {problem.Message}");
    return 1;
}

static int Usage()
{
    Console.Error.WriteLine(
        $"""
        count FILE                  number of solutions of a DIMACS CNF file (.cnf or .cnf.gz)
        cover MODEL [CONSTRAINTS]   few rows that have every allowed pair of values
        curve                       compiling and propagating synthetic catalogues of 300 to 3000 options
        example FILE                worked examples: id, pass or fail, and what came out
        optimum FILE|{PropagateCommand.SyntheticWord}      the heaviest solution by a pass over the diagram and by CP-SAT
        picker SITE FOLDER          a page that times the scripts of the order page, with the machines of a published site
        propagate FILE|{PropagateCommand.SyntheticWord}    one propagation against one reading of the diagram
        """
    );
    return 2;
}

using Configurator.Cli.Disk;
using Configurator.Core.Review;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary>A run of <c>review</c> as it was asked for.</summary>
internal sealed record ReviewRun(
    string Catalogue,
    ReviewFormat Format,
    IReadOnlyList<string> Files,
    ReviewVerdict Verdict,
    string Date,
    string? Preview,
    TextWriter Output,
    TextWriter Errors
)
{
    /// <param name="after">Null for the files in the catalogue's folder.</param>
    public int Run(string before, string? after)
    {
        var readings = new[]
        {
            ReviewedReader.Read(before, Catalogue),
            after is null ? CatalogueReader.Read(Catalogue) : ReviewedReader.Read(after, Catalogue),
        };
        if (readings.Select(reading => reading.Problem).FirstOrDefault(problem => problem is not null) is { } problem)
        {
            return Report.Environment(problem, Errors);
        }

        var sides = new[] { before, after ?? Catalogue }
            .Zip(readings)
            .AsParallel()
            .AsOrdered()
            .Select(side => new ReviewSide(
                side.First,
                side.Second.Sources,
                Pipeline.CheckWithProse(side.Second.Sources, Shared.Day(Date))
            ))
            .ToArray();
        var folder = CatalogueFolder.FromHere(after is not null && ReviewedReader.IsFolder(after) ? after : Catalogue);
        return Run(sides[0], sides[1], folder);
    }

    private int Run(ReviewSide before, ReviewSide after, string folder)
    {
        var report = Reviewer.Compare(before, after, Shared.Day(Date));
        Output.Write(ReviewOutput.Of(report, Verdict, Format, folder));
        Output.Flush();
        if (WriteFiles(report, folder) is { } problem)
        {
            return Report.Environment(problem, Errors);
        }

        var code = Preview is null ? ExitCodes.Fine : ReviewPreview.Write(this, before, after, report);
        return code != ExitCodes.Fine ? code
            : Verdict.Fails(report) ? ExitCodes.Findings
            : ExitCodes.Fine;
    }

    private DiskProblem? WriteFiles(ReviewReport report, string folder)
    {
        foreach (var file in Files)
        {
            try
            {
                File.WriteAllText(file, ReviewOutput.Of(report, Verdict, ReviewOutput.FormatOf(file)!.Value, folder));
            }
            catch (Exception failure) when (DiskProblem.Caused(failure))
            {
                return DiskProblem.From($"cannot write `{file}`", failure);
            }
        }

        return null;
    }
}

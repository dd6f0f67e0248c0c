using System.Reflection;

namespace TagPage.Web.Start.CommandLine;

internal static class Usage
{
    public const string Text = """
        TagPage keeps a racket stringing shop’s records and gives every racket a page of its own.

          TagPage.Web                           start the shop
          TagPage.Web demo [--new-password]     start an invented shop to try things in; --start-over wipes it and begins again
          TagPage.Web import FOLDER [--check]   bring records in from CSV files; --check saves nothing
          TagPage.Web set-up-link               print a one-time link to set up the shop or to replace a forgotten password
          TagPage.Web backup                    make a backup as each night does, even while the shop runs
          TagPage.Web restore FILE              go back to a backup; stop the shop first
          TagPage.Web check                     say what is wrong with the setup: address, email, backups, disk, clock
          TagPage.Web copy FOLDER               copy everything into a new data folder, even while the shop runs
          TagPage.Web new-keys                  end every sign-in and void every link, after a theft; stop the shop first
          TagPage.Web --help | --version

        Options of import:

          --matches merge|apart                 clients who may be on file are the same people, or others; without it they are listed
          --settled-before 2027-03-14           jobs strung before this day count as collected and paid

        Settings, after the command, in the environment (TagPage__Address) or in appsettings.json:

          --urls http://localhost:5080          where to listen; http://0.0.0.0:5080 lets phones connect
          --TagPage:DataFolder=data             where everything is kept; data-demo for the demo
          --TagPage:Address=https://…           the address that tags carry
        """;

    public static string Version =>
        "TagPage " + typeof(Usage).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}

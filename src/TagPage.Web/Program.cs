using TagPage.Web.Hosting;

var builder = App.CreateBuilder(args);
var app = App.Build(builder);
app.Run();

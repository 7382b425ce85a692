# The usual cautions. They stand in the help, in every output and on every sheet.

cautions-title = Antes de usar esto
cautions-care = Solo bajo el cuidado del cirujano que operó.
cautions-decides = El médico decide y firma. Este programa solo propone y muestra sus motivos.
cautions-practice = Las normas locales y la práctica con licencia deciden donde difieran de lo impreso aquí.
cautions-emergency = No es un servicio de urgencias. En peligro, llame al número de emergencias.
cautions-time = No sirve para lo que no puede esperar. Nada de esto avisa a nadie a tiempo.
cautions-line = Solo bajo el cuidado del cirujano que operó. Él decide y firma. Deciden las normas locales y la práctica con licencia. No es un servicio de urgencias ni sirve para lo que no puede esperar.
